#include "app/fields/check_field.hpp"

#include "app/fields/cell_text.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/results.hpp"
#include "report/results/results_text.hpp"

#include <algorithm>

namespace gusset {
namespace {

bool isNone(const Truss& truss, const CheckField& field) {
    return checkNumberOf(field).orNone && truss.checks.*field.number == 0;
}

} // namespace

const CheckNumber& checkNumberOf(const CheckField& field) {
    return *std::find_if(kCheckNumbers.begin(), kCheckNumbers.end(),
                         [&](const CheckNumber& it) { return it.value == field.number; });
}

std::string checkText(const Truss& truss, const CheckField& field) {
    return isNone(truss, field) ? std::string{} : shortestNumber(truss.checks.*field.number);
}

std::string checkLook(const Truss& truss, const CheckField& field) {
    return isNone(truss, field) ? std::string{}
                                : formatNumber(truss.checks.*field.number, typedStyleOf(truss));
}

Outcome<Edit> checkEdit(const Truss& truss, const CheckField& field, const std::string& typed) {
    CheckSettings settings = truss.checks;
    const std::string text = trimmed(typed);
    if (text.empty()) {
        settings.*field.number = checkNumberOf(field).orNone ? 0 : CheckSettings{}.*field.number;
        return Edit(SetChecks{settings});
    }
    const Outcome<double> value = readNumber(text);
    if (!value) {
        return value.issues();
    }
    settings.*field.number = value.value();
    return Edit(SetChecks{settings});
}

std::vector<CheckFactor> factorsOf(const CheckSettings& settings) {
    std::vector<CheckFactor> factors;
    if (settings.formula == ColumnFormula::En1993) {
        factors = {{&CheckSettings::gammaM0, phrase::kFactorM0},
                   {&CheckSettings::gammaM1, phrase::kFactorM1}};
    } else if (settings.formula == ColumnFormula::Euler) {
        factors = {{&CheckSettings::strengthFactor, phrase::kStrengthDividedBy},
                   {&CheckSettings::eulerFactor, phrase::kCriticalDividedBy}};
    } else if (settings.safety == AiscSafety::Resistance) {
        factors = {{&CheckSettings::phi, phrase::kFactorPhi}};
    } else {
        factors = {{&CheckSettings::omega, phrase::kFactorOmega}};
    }
    factors.push_back({&CheckSettings::effectiveLength, phrase::kFactorK});
    factors.push_back(
        {&CheckSettings::compressionLimit, phrase::kSlendernessPressed, phrase::kNoLimit});
    factors.push_back({&CheckSettings::tensionLimit, phrase::kSlendernessPulled, phrase::kNoLimit});
    return factors;
}

} // namespace gusset
