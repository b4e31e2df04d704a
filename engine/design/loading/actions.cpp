#include "design/loading/actions.hpp"

#include "phrases/design/loading.hpp"
#include "statics/equilibrium/structure.hpp"

#include <algorithm>
#include <array>

namespace gusset {
namespace {

constexpr std::array<ActionRule, 12> kRules{{
    {"permanent", phrase::kActionPermanent, {1, 1, 1}, AsceLoad::D},
    {"imposed-a", phrase::kActionImposedA, {0.7, 0.5, 0.3}, AsceLoad::L},
    {"imposed-b", phrase::kActionImposedB, {0.7, 0.5, 0.3}, AsceLoad::L},
    {"imposed-c", phrase::kActionImposedC, {0.7, 0.7, 0.6}, AsceLoad::L},
    {"imposed-d", phrase::kActionImposedD, {0.7, 0.7, 0.6}, AsceLoad::L},
    {"imposed-e", phrase::kActionImposedE, {1.0, 0.9, 0.8}, AsceLoad::L},
    {"imposed-f", phrase::kActionImposedF, {0.7, 0.7, 0.6}, AsceLoad::L},
    {"imposed-g", phrase::kActionImposedG, {0.7, 0.5, 0.3}, AsceLoad::L},
    {"imposed-h", phrase::kActionImposedH, {0, 0, 0}, AsceLoad::Lr},
    {"snow", phrase::kActionSnow, {0.5, 0.2, 0}, AsceLoad::S},
    {"snow-high", phrase::kActionSnowHigh, {0.7, 0.5, 0.2}, AsceLoad::S},
    {"wind", phrase::kActionWind, {0.6, 0.2, 0}, AsceLoad::W},
}};

} // namespace

std::span<const ActionRule> actionRules() { return kRules; }

const ActionRule& ruleOf(CaseKind action) { return kRules[static_cast<std::size_t>(action)]; }

std::optional<CaseKind> actionNamed(std::string_view word) {
    for (std::size_t i = 0; i < kRules.size(); ++i) {
        if (kRules[i].word == word) {
            return CaseKind(i);
        }
    }
    return std::nullopt;
}

std::vector<CaseAction> actionsOf(const Truss& truss) {
    std::vector<CaseAction> actions;
    for (const std::string& name : caseNames(truss)) {
        const auto found = std::find_if(truss.cases.begin(), truss.cases.end(),
                                        [&](const LoadCase& it) { return it.id == name; });
        actions.push_back(
            {name, found == truss.cases.end() ? std::nullopt : actionNamed(found->kind)});
    }
    return actions;
}

} // namespace gusset
