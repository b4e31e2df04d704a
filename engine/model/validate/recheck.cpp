#include "model/validate/recheck.hpp"

#include "model/validate/findings.hpp"

#include <algorithm>

namespace gusset {

namespace {

constexpr std::size_t kFewMoved = 8; // joints; for more, a full sweep is faster

template <class Item, class Same>
bool all(const std::vector<Item>& before, const std::vector<Item>& now, Same same) {
    return std::equal(before.begin(), before.end(), now.begin(), now.end(), same);
}

bool sameNames(const Load& before, const Load& now) {
    return before.what.index() == now.what.index() && before.caseId == now.caseId &&
           jointsOf(before) == jointsOf(now);
}

// Whether all names, and all references to them, are unchanged.
bool sameNames(const Truss& before, const Truss& now) {
    const auto joints = [](const Joint& a, const Joint& b) { return a.label == b.label; };
    const auto members = [](const Member& a, const Member& b) {
        return a.a == b.a && a.b == b.b && a.section == b.section;
    };
    const auto supports = [](const Support& a, const Support& b) { return a.joint == b.joint; };
    const auto loads = [](const Load& a, const Load& b) { return sameNames(a, b); };
    return all(before.joints, now.joints, joints) && all(before.members, now.members, members) &&
           all(before.supports, now.supports, supports) && all(before.loads, now.loads, loads) &&
           before.title == now.title && before.materials == now.materials &&
           before.sections == now.sections && before.combinations == now.combinations &&
           before.moving == now.moving && before.checks.held == now.checks.held;
}

std::vector<JointId> movedJoints(const Truss& before, const Truss& now) {
    std::vector<JointId> moved;
    for (std::size_t i = 0; i < now.joints.size(); ++i) {
        if (before.joints[i].at != now.joints[i].at) {
            moved.push_back(JointId{static_cast<int>(i)});
        }
    }
    return moved;
}

double largerSide(const Truss& truss) {
    const Extent box = extent(truss);
    return std::max(box.high.x - box.low.x, box.high.y - box.low.y);
}

void recheckGeometry(const Truss& truss, Checked& checked) {
    const std::vector<JointId> moved = movedJoints(checked.truss, truss);
    if (moved.empty()) {
        return;
    }
    const bool unsuspicious = checked.suspicions.empty() && moved.size() <= kFewMoved &&
                              largerSide(checked.truss) == largerSide(truss) &&
                              staysUnsuspicious(truss, moved);
    if (!unsuspicious) {
        checked.suspicions = suspicious(truss);
    }
    for (JointId joint : moved) {
        checked.truss.joints[joint.at()].at = truss.joints[joint.at()].at;
    }
}

} // namespace

Findings recheck(const Truss& truss, Checked& checked) {
    Findings findings;
    const bool known = checked.sound && sameNames(checked.truss, truss);
    findings.errors = errorsOf(truss, known ? Names::Sound : Names::Unknown);
    if (!findings.errors.empty()) {
        checked.sound = known; // the names still are, and the geometry was
        return findings;
    }
    if (known) {
        recheckGeometry(truss, checked);
    } else {
        checked = {true, truss, suspicious(truss)};
    }
    findings.notes = notesOf(truss, checked.suspicions);
    return findings;
}

} // namespace gusset
