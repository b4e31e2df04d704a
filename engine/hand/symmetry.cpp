// Truss, loads and reactions that are mirror images about an upright line: one half is worked, the
// other half is written down by symmetry.

#include "hand/stages.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

Vec2 mirrored(Vec2 direction) { return {-direction.x, direction.y}; }

// What acts on a joint from outside: its load and its reactions, as far as they are known.
std::optional<Vec2> outsideForce(const Sheet& sheet, JointId joint) {
    Vec2 sum = sheet.loads[joint.at()];
    for (const int index : sheet.restraintsOf[joint.at()]) {
        const auto i = static_cast<std::size_t>(index);
        if (!sheet.reactions[i]) {
            return std::nullopt;
        }
        sum = sum + *sheet.reactions[i] * sheet.structure.restraints[i].along;
    }
    return sum;
}

bool mirrorsForce(const Sheet& sheet, JointId joint, JointId other) {
    const auto here = outsideForce(sheet, joint);
    const auto there = outsideForce(sheet, other);
    if (!here || !there) {
        return false;
    }
    const Vec2 gap = *there - mirrored(*here);
    return isNothing(sheet, gap.x) && isNothing(sheet, gap.y);
}

double middleOf(const Truss& truss) {
    const Extent box = extent(truss);
    return (box.low.x + box.high.x) / 2;
}

JointId mirrorJoint(const Sheet& sheet, double middle, JointId joint) {
    const Vec2 at = positionOf(sheet, joint);
    const Vec2 wanted{2 * middle - at.x, at.y};
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        if (length(sheet.truss.joints[i].at - wanted) <= sheet.spot) {
            return {static_cast<int>(i)};
        }
    }
    return {};
}

std::optional<std::vector<JointId>> mirrorJoints(const Sheet& sheet) {
    const double middle = middleOf(sheet.truss);
    std::vector<JointId> mirror;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const JointId other = mirrorJoint(sheet, middle, joint);
        if (!other.valid() || !mirrorsForce(sheet, joint, other)) {
            return std::nullopt;
        }
        mirror.push_back(other);
    }
    return mirror;
}

std::optional<std::vector<MemberId>> mirrorMembers(const Sheet& sheet,
                                                   const std::vector<JointId>& joints) {
    std::vector<MemberId> mirror;
    for (const Member& member : sheet.truss.members) {
        const JointId from = joints[member.a.at()];
        const JointId to = joints[member.b.at()];
        const auto& there = membersAt(sheet, from);
        const auto found = std::find_if(there.begin(), there.end(), [&](MemberId candidate) {
            return otherEnd(sheet, from, candidate) == to;
        });
        const MemberId other = found == there.end() ? MemberId{} : *found;
        if (!other.valid()) {
            return std::nullopt;
        }
        mirror.push_back(other);
    }
    return mirror;
}

// What was used of a joint's equilibrium has been used of its mirror image too.
void mirrorUse(Sheet& sheet) {
    for (std::size_t& seen = sheet.mirror.usesSeen; seen < sheet.usedOrder.size(); ++seen) {
        const JointId joint = sheet.usedOrder[seen];
        const auto& here = sheet.used[joint.at()];
        auto& there = sheet.used[sheet.mirror.joints[joint.at()].at()];
        for (std::size_t k = there.size(); k < here.size(); ++k) {
            there.push_back(mirrored(here[k]));
        }
    }
}

} // namespace

void writeSymmetry(Sheet& sheet) {
    const auto joints = mirrorJoints(sheet);
    const auto members = joints ? mirrorMembers(sheet, *joints) : std::nullopt;
    if (!members) {
        return;
    }
    int pairs = 0;
    for (std::size_t i = 0; i < members->size(); ++i) {
        pairs += (*members)[i].at() != i && !sheet.forces[i] ? 1 : 0;
    }
    if (pairs < 4) { // a pair or none: not worth saying
        return;
    }
    sheet.mirror = {*joints, *members, middleOf(sheet.truss)};
    Step step;
    step.kind = StepKind::Symmetry;
    step.remarks.push_back({.kind = RemarkKind::Symmetric});
    sheet.steps.push_back(step);
}

namespace {

// Since images were last written, in the order of the members.
std::vector<MemberId> membersFoundSince(Sheet& sheet) {
    std::vector<MemberId> members;
    for (std::size_t& seen = sheet.mirror.forcesSeen; seen < sheet.order.size(); ++seen) {
        if (sheet.order[seen].kind == SymbolKind::MemberForce) {
            members.push_back(sheet.order[seen].member);
        }
    }
    std::sort(members.begin(), members.end());
    return members;
}

} // namespace

void writeMirrorImages(Sheet& sheet) {
    if (sheet.mirror.members.empty()) {
        return;
    }
    Step step;
    step.kind = StepKind::Symmetry;
    for (const MemberId member : membersFoundSince(sheet)) {
        const Symbol other = forceSymbol(sheet.mirror.members[member.at()]);
        if (!valueOf(sheet, other)) {
            step.uses.push_back(forceSymbol(member));
            step.found.push_back(record(sheet, other, *sheet.forces[member.at()]));
            step.found.back().drawn = drawnSense(sheet, other);
            step.members.push_back(other.member);
        }
    }
    mirrorUse(sheet);
    if (!step.found.empty()) {
        step.remarks.push_back({.kind = RemarkKind::BySymmetry, .symbols = step.uses});
        sheet.steps.push_back(step);
    }
}

bool onFarSide(const Sheet& sheet, JointId joint) {
    return !sheet.mirror.joints.empty() &&
           positionOf(sheet, joint).x > sheet.mirror.middle + sheet.spot;
}

} // namespace gusset
