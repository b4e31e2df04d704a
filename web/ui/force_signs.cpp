#include "ui/force_signs.hpp"

#include "phrases/results/tables.hpp"

namespace gusset {

const std::array<ForceSign, 3>& forceSigns() {
    static constexpr std::array<ForceSign, 3> kSigns{
        {{Ink::Tension, phrase::kLetterTension, phrase::kWordTension},
         {Ink::Compression, phrase::kLetterCompression, phrase::kWordCompression},
         {Ink::Zero, phrase::kLetterZero, phrase::kFactNoForce}}};
    return kSigns;
}

} // namespace gusset
