// What this version reads and keeps but does not compute. Remove each line once its feature is
// computed.

#include "model/validate/findings.hpp"
#include "model/validate/validate.hpp"
#include "phrases/faults/suspicions.hpp"

#include <unordered_set>

namespace gusset {

Issues absentCases(const Truss& truss) {
    Issues notes;
    if (truss.combinations.empty()) {
        return notes;
    }
    std::unordered_set<std::string> cases;
    for (const Load& load : truss.loads) {
        cases.emplace(caseNameOf(load.caseId));
    }
    for (std::size_t i = 0; i < truss.combinations.size(); ++i) {
        for (const auto& [caseId, factor] : truss.combinations[i].factors) {
            if (!cases.contains(caseId) && notes.size() < kMostIssues) {
                notes.push_back({IssueCode::NotComputed,
                                 placeOf("combinations", i) + ".factors." + caseId,
                                 statement(phrase::kCaseWithoutLoad, {{"case", caseId}})});
            }
        }
    }
    return notes;
}

Issues leftOut(const Truss& truss) {
    Issues notes = absentCases(truss);
    if (!truss.moving.empty()) {
        notes.push_back({IssueCode::NotComputed, "moving", phrase::kMovingLeftOut});
    }
    return notes;
}

} // namespace gusset
