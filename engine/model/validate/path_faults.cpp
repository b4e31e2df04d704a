#include "model/validate/path_faults.hpp"

#include "core/tolerance.hpp"
#include "model/truss/member_index.hpp"
#include "model/validate/findings.hpp"
#include "model/validate/validate.hpp"
#include "phrases/faults/suspicions.hpp"

#include <algorithm>

namespace gusset {

std::optional<Issue> faultOfPath(const Truss& truss, const MemberIndex& members,
                                 const std::vector<JointId>& path, const std::string& at) {
    const auto label = [&](std::size_t i) { return truss.joints[path[i].at()].label; };
    const auto x = [&](std::size_t i) { return truss.joints[path[i].at()].at.x; };
    const Extent box = extent(truss);
    const double least = kSameSpot * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    const double onwards = path.size() > 1 && x(1) < x(0) ? -1 : 1;
    for (std::size_t i = 1; i < path.size(); ++i) {
        if (!members.find(path[i - 1], path[i]).valid()) {
            return Issue{
                IssueCode::UnknownName, placeOf(at, i),
                statement(phrase::kPathLacksMember, {{"a", label(i - 1)}, {"b", label(i)}})};
        }
        if (onwards * (x(i) - x(i - 1)) <= least) {
            return Issue{IssueCode::OutOfRange, placeOf(at, i),
                         statement(phrase::kPathTurnsBack, {{"a", label(i - 1)}, {"b", label(i)}})};
        }
    }
    return std::nullopt;
}

Issues pathNotes(const Truss& truss) {
    Issues notes;
    if (truss.moving.empty()) {
        return notes;
    }
    const MemberIndex members(truss);
    for (std::size_t i = 0; i < truss.moving.size() && notes.size() < kMostIssues; ++i) {
        const std::string at = placeOf("moving", i) + ".path";
        if (const auto fault = faultOfPath(truss, members, truss.moving[i].path, at)) {
            notes.push_back(*fault);
        }
    }
    return notes;
}

} // namespace gusset
