#pragma once
// What load cases stand for, and what the standards say of each kind.

#include "core/phrase.hpp"
#include "model/truss/truss.hpp"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace gusset {

enum class CaseKind {
    Permanent,
    ImposedA, // by the categories of EN 1991-1-1:2002, 6.3
    ImposedB,
    ImposedC,
    ImposedD,
    ImposedE,
    ImposedF,
    ImposedG,
    ImposedH, // of roofs that are not used
    Snow,
    SnowHigh,
    Wind,
};

struct CombinationFactors { // ψ0, ψ1, ψ2
    double combination = 0;
    double frequent = 0;
    double quasiPermanent = 0;
};

enum class AsceLoad { D, L, Lr, S, W }; // ASCE 7-16, 2.2

struct ActionRule {
    std::string_view word; // in the file: LoadCase::kind
    Phrase<> says;
    // EN 1990:2002, table A1.1, recommended values. Of snow: those for sites up to 1000 m and above
    // it in the countries that are not named there.
    CombinationFactors psi;
    AsceLoad asce;
};
[[nodiscard]] std::span<const ActionRule> actionRules(); // in the order of the enumeration
[[nodiscard]] const ActionRule& ruleOf(CaseKind);
[[nodiscard]] std::optional<CaseKind> actionNamed(std::string_view word);

struct CaseAction {
    std::string caseId;
    std::optional<CaseKind> action; // none: the model does not say, or not with one of these words
};
// One per load case, in the order of caseNames.
[[nodiscard]] std::vector<CaseAction> actionsOf(const Truss&);

} // namespace gusset
