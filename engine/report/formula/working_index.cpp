#include "report/formula/working_index.hpp"

#include <algorithm>

namespace gusset {
namespace {

void readFindings(const Working& working, WorkingIndex& index) {
    for (std::size_t i = 0; i < working.steps.size(); ++i) {
        for (const Found& found : working.steps[i].found) {
            const WorkingIndex::Finding finding{i, found.value, found.drawn};
            if (found.symbol.kind == SymbolKind::MemberForce) {
                index.ofMember[found.symbol.member.at()].push_back(finding);
            } else {
                index.ofRestraint[found.symbol.restraint.at()].push_back(finding);
            }
        }
    }
}

} // namespace

WorkingIndex workingIndexOf(const Truss& truss, const Working& working) {
    const std::vector<Restraint>& restraints = working.structure.restraints;
    WorkingIndex index{.made = true};
    index.ofMember.resize(truss.members.size());
    index.ofRestraint.resize(restraints.size());
    index.membersAt.resize(truss.joints.size());
    index.restraintsAt.resize(truss.joints.size());
    readFindings(working, index);
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        index.membersAt[truss.members[i].a.at()].push_back({static_cast<int>(i)});
        index.membersAt[truss.members[i].b.at()].push_back({static_cast<int>(i)});
    }
    for (std::size_t i = 0; i < restraints.size(); ++i) {
        index.restraintsAt[restraints[i].joint.at()].push_back({static_cast<int>(i)});
    }
    for (const Vec2 load : working.loads) {
        index.largestLoad = std::max(index.largestLoad, length(load));
    }
    if (findJoint(truss, "P").valid()) {
        index.load = "W";
    }
    return index;
}

} // namespace gusset
