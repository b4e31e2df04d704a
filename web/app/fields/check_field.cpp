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

// What all of them have; none where they have nothing of their own, or differ.
std::optional<double> commonFactor(const Truss& truss, const std::vector<MemberId>& members,
                                   FactorField field) {
    const auto factorOf = [&](MemberId member) {
        const LengthFactors& factors = truss.members[member.at()].factors;
        return field == FactorField::In ? factors.in : factors.out;
    };
    const std::optional<double> first = factorOf(members.front());
    return std::all_of(members.begin(), members.end(),
                       [&](MemberId member) { return factorOf(member) == first; })
               ? first
               : std::nullopt;
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

std::string factorText(const Truss& truss, const std::vector<MemberId>& members,
                       FactorField field) {
    const std::optional<double> factor = commonFactor(truss, members, field);
    return factor ? shortestNumber(*factor) : std::string{};
}

std::string factorLook(const Truss& truss, const std::vector<MemberId>& members,
                       FactorField field) {
    const std::optional<double> factor = commonFactor(truss, members, field);
    return factor ? formatNumber(*factor, typedStyleOf(truss)) : std::string{};
}

Outcome<Edit> factorEdit(const std::vector<MemberId>& members, FactorField field,
                         const std::string& typed) {
    const bool out = field == FactorField::Out;
    const std::string text = trimmed(typed);
    if (text.empty()) {
        return Edit(FactorMembers{members, out, std::nullopt});
    }
    const Outcome<double> value = readNumber(text);
    return value ? Outcome<Edit>(FactorMembers{members, out, value.value()})
                 : Outcome<Edit>(value.issues());
}

bool areHeld(const Truss& truss, const std::vector<JointId>& joints) {
    const std::optional<std::vector<JointId>>& held = truss.checks.held;
    return !held || std::all_of(joints.begin(), joints.end(), [&](JointId joint) {
        return std::find(held->begin(), held->end(), joint) != held->end();
    });
}

Edit holdEdit(const Truss& truss, const std::vector<JointId>& joints, bool hold) {
    CheckSettings settings = truss.checks;
    std::vector<JointId> held;
    for (int i = 0; i < static_cast<int>(truss.joints.size()); ++i) {
        const bool isOne = std::find(joints.begin(), joints.end(), JointId{i}) != joints.end();
        if (isOne ? hold : areHeld(truss, {JointId{i}})) {
            held.push_back({i});
        }
    }
    settings.held = held.size() == truss.joints.size() ? std::nullopt : std::optional(held);
    return Edit(SetChecks{settings});
}

std::vector<CheckFactor> factorsOf(const Truss& truss) {
    const CheckSettings& settings = truss.checks;
    const bool timber = std::any_of(truss.sections.begin(), truss.sections.end(),
                                    [](const Section& it) { return it.shape == "timber"; });
    std::vector<CheckFactor> factors;
    if (settings.formula == ColumnFormula::En1993) {
        factors = {{&CheckSettings::gammaM0, phrase::kFactorM0},
                   {&CheckSettings::gammaM1, phrase::kFactorM1},
                   {&CheckSettings::gammaM2, phrase::kFactorM2}};
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
    factors.push_back({&CheckSettings::deflection, phrase::kMovementLimit, phrase::kNoLimit});
    if (timber) {
        factors.insert(factors.end(), {{&CheckSettings::kMod, phrase::kFactorModification},
                                       {&CheckSettings::gammaTimber, phrase::kFactorTimber},
                                       {&CheckSettings::betaC, phrase::kFactorStraightness}});
    }
    return factors;
}

} // namespace gusset
