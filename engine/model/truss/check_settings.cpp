#include "model/truss/check_settings.hpp"

#include "core/number.hpp"
#include "phrases/faults/faults.hpp"

namespace gusset {

namespace {

// What messages call the numbers, in the order of kCheckNumbers.
constexpr std::array kNamesOfNumbers{
    phrase::kFactorBucklingLength, phrase::kFactorStrength,  phrase::kFactorEuler,
    phrase::kPartialFactorM0,      phrase::kPartialFactorM1, phrase::kFactorResistance,
    phrase::kFactorSafety,         phrase::kLimitInTension,  phrase::kLimitInCompression,
    phrase::kLimitOfMovement,      phrase::kFactorKMod,      phrase::kPartialFactorTimber,
    phrase::kPartialFactorM2,      phrase::kFactorBetaC,
};
static_assert(kNamesOfNumbers.size() == kCheckNumbers.size());

} // namespace

Issues faultsOf(const CheckSettings& settings) {
    Issues faults;
    for (std::size_t i = 0; i < kCheckNumbers.size(); ++i) {
        const CheckNumber& number = kCheckNumbers[i];
        const double value = settings.*number.value;
        const bool fits = value >= number.least && value <= number.most;
        if (fits || (number.orNone && value == 0)) {
            continue;
        }
        faults.push_back(
            {IssueCode::OutOfRange, "checks." + std::string(number.key),
             statement(number.orNone ? phrase::kCheckNumberRangeOrNone : phrase::kCheckNumberRange,
                       {{"what", kNamesOfNumbers[i]},
                        {"least", shortestNumber(number.least)},
                        {"most", shortestNumber(number.most)}})});
    }
    return faults;
}

} // namespace gusset
