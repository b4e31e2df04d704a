// Trusses whose structure, loads and reactions are symmetric about a vertical axis: one half is
// worked, and the other half follows by symmetry.

#include "hand/paper/stages.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

Vec2 mirrored(Vec2 direction) { return {-direction.x, direction.y}; }

std::optional<Vec2> reactionAt(const Sheet& sheet, JointId joint) {
    Vec2 sum;
    for (const RestraintId restraint : sheet.restraintsOf[joint.at()]) {
        const auto i = restraint.at();
        if (!sheet.reactions[i]) {
            return std::nullopt;
        }
        sum = sum + *sheet.reactions[i] * sheet.structure.restraints[i].along;
    }
    return sum;
}

bool mirror(const Sheet& sheet, Vec2 here, Vec2 there) {
    const Vec2 gap = there - mirrored(here);
    return isNothing(sheet, gap.x) && isNothing(sheet, gap.y);
}

// Load and reaction together, which is all that the members depend on.
bool mirrorsForce(const Sheet& sheet, JointId joint, JointId other) {
    const auto here = reactionAt(sheet, joint);
    const auto there = reactionAt(sheet, other);
    return here && there &&
           mirror(sheet, sheet.loads[joint.at()] + *here, sheet.loads[other.at()] + *there);
}

bool mirrorsLoad(const Sheet& sheet, JointId joint, JointId other) {
    return mirror(sheet, sheet.loads[joint.at()], sheet.loads[other.at()]);
}

double middleOf(const Truss& truss) {
    const Extent box = extent(truss);
    return (box.low.x + box.high.x) / 2;
}

// The joints sorted along an inclined line, chosen so that few joints of a drawing share a place on
// it.
class JointsAlong {
public:
    explicit JointsAlong(const Sheet& sheet) : sheet_(sheet), low_(extent(sheet.truss).low) {
        for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
            places_.push_back({placeOf(sheet.truss.joints[i].at), JointId{static_cast<int>(i)}});
        }
        std::sort(places_.begin(), places_.end());
    }

    // The first joint, in joint order, at this position; none if there is none.
    [[nodiscard]] JointId at(Vec2 spot) const {
        const double reach = 4 * sheet_.spot; // more than the width of a spot along the line
        JointId first;
        auto it = std::lower_bound(places_.begin(), places_.end(),
                                   std::pair(placeOf(spot) - reach, JointId{}));
        for (; it != places_.end() && it->first <= placeOf(spot) + reach; ++it) {
            const bool here = length(positionOf(sheet_, it->second) - spot) <= sheet_.spot;
            if (here && (!first.valid() || it->second < first)) {
                first = it->second;
            }
        }
        return first;
    }

private:
    [[nodiscard]] double placeOf(Vec2 at) const {
        constexpr double kGolden = 0.61803398874989485; // least like a ratio of small integers
        return (at.x - low_.x) + kGolden * (at.y - low_.y);
    }

    const Sheet& sheet_;
    Vec2 low_;
    std::vector<std::pair<double, JointId>> places_; // sorted
};

// The image of each joint, if all have one on which `mirrors` agrees.
using Mirrors = bool (*)(const Sheet&, JointId, JointId);
std::optional<std::vector<JointId>> mirrorJoints(const Sheet& sheet, Mirrors mirrors) {
    const double middle = middleOf(sheet.truss);
    const JointsAlong joints(sheet);
    std::vector<JointId> mirror;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const Vec2 at = positionOf(sheet, joint);
        const JointId other = joints.at({2 * middle - at.x, at.y});
        if (!other.valid() || !mirrors(sheet, joint, other)) {
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

// Where neither the load nor the reaction is that of the mirror image, but their sum is.
std::vector<JointId> unevenJoints(const Sheet& sheet) {
    std::vector<JointId> uneven;
    for (std::size_t i = 0; i < sheet.mirror.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        if (!mirrorsLoad(sheet, joint, sheet.mirror.joints[i])) {
            uneven.push_back(joint);
        }
    }
    return uneven;
}

// If a joint's equilibrium was used in a direction, so was that of its mirror image.
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

std::optional<std::vector<JointId>> imagesAsGiven(const Sheet& sheet) {
    auto joints = mirrorJoints(sheet, mirrorsLoad);
    return joints && mirrorMembers(sheet, *joints) ? std::move(joints) : std::nullopt;
}

void writeSymmetry(Sheet& sheet) {
    const auto joints = mirrorJoints(sheet, mirrorsForce);
    const auto members = joints ? mirrorMembers(sheet, *joints) : std::nullopt;
    if (!members) {
        return;
    }
    int pairs = 0;
    for (std::size_t i = 0; i < members->size(); ++i) {
        pairs += (*members)[i].at() != i && !sheet.forces[i] ? 1 : 0;
    }
    if (pairs < 4) { // no pair or only one: not worth saying
        return;
    }
    sheet.mirror = {*joints, *members, middleOf(sheet.truss)};
    Step step;
    step.kind = StepKind::Symmetry;
    const std::vector<JointId> uneven = unevenJoints(sheet);
    step.remarks.push_back(uneven.empty()
                               ? remarkThat(phrase::kSymmetric)
                               : remarkThat(phrase::kSymmetricTogether, {{"joints", uneven}}));
    sheet.steps.push_back(step);
}

namespace {

// Found since images were last written, in member order.
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
            step.found.push_back(recordSame(sheet, other, forceSymbol(member)));
            step.found.back().drawn = drawnSense(sheet, other);
            step.members.push_back(other.member);
        }
    }
    mirrorUse(sheet);
    if (!step.found.empty()) {
        step.remarks.push_back(remarkThat(phrase::kBySymmetry, {{"symbols", step.uses}}));
        sheet.steps.push_back(step);
    }
}

bool onFarSide(const Sheet& sheet, JointId joint) {
    return !sheet.mirror.joints.empty() &&
           positionOf(sheet, joint).x > sheet.mirror.middle + sheet.spot;
}

} // namespace gusset
