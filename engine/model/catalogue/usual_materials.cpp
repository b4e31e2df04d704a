#include "model/catalogue/usual_materials.hpp"

#include "phrases/model/catalogue.hpp"

namespace gusset {

Material usualSteel(const PhraseBook& book, const Units& units) {
    return {.id = sentenceIn(book, phrase::kMaterialSteel.english),
            .E = converted(210, StressUnit::GPa, units.stress),
            .strength = converted(235, StressUnit::MPa, units.stress),
            .density = 7850,
            .alpha = 12e-6,
            .unknown = {}};
}

Material usualTimber(const PhraseBook& book, const Units& units) {
    return {.id = sentenceIn(book, phrase::kMaterialTimber.english),
            .E = converted(11, StressUnit::GPa, units.stress),
            .strength = std::nullopt,
            .density = 420,
            .alpha = 5e-6,
            .unknown = {}};
}

} // namespace gusset
