#include "canvas/scene/snap.hpp"

#include "canvas/scene/pick.hpp"
#include "core/angle.hpp"
#include "core/tolerance.hpp"
#include "model/edit/rebuild.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {

namespace {

constexpr double kGuideReach = 6;    // px to snap to an alignment, an angle or a length
constexpr double kDegreesApart = 15; // common directions of members
constexpr double kFractionReach = 9; // px to snap to a middle or a third of a member

// Everything there is to snap to.
struct Ground {
    const Truss& truss;
    const View& view;
};

// Px on the board between two points of the plane.
double apart(const Ground& ground, Vec2 one, Vec2 other) {
    return ground.view.camera.scale * length(one - other);
}

// A finger must be able to reach the grid point next to a joint.
double jointReach(const View& view, double slack) {
    return view.snapToGrid ? std::min(slack, 0.6 * view.gridStep * view.camera.scale) : slack;
}

std::optional<Snapped> onJoint(const Ground& ground, const SnapRequest& request, Vec2 world) {
    JointId nearest;
    double least = jointReach(ground.view, request.slack);
    for (std::size_t i = 0; i < ground.truss.joints.size(); ++i) {
        const double away = apart(ground, ground.truss.joints[i].at, world);
        if (static_cast<int>(i) != request.moving.index && away <= least) {
            least = away;
            nearest = JointId{static_cast<int>(i)};
        }
    }
    if (!nearest.valid()) {
        return std::nullopt;
    }
    return Snapped{{nearest, ground.truss.joints[nearest.at()].at}, {SnapKind::Joint, {}}};
}

// The point on a member where a person would put a joint: its middle, thirds and quarters, a grid
// point on it, else a round fraction.
Vec2 placeOnMember(const Ground& ground, Vec2 a, Vec2 b, Vec2 world) {
    const Vec2 gridPoint = snapToGrid(ground.view, world);
    if (apart(ground, gridPoint, world) < kFractionReach * 2 &&
        ground.view.camera.scale * distanceToSegment(gridPoint, a, b) < kSamePixel) {
        return gridPoint;
    }
    const double share = shareAlong(world, a, b);
    for (const double fraction : {1.0 / 2, 1.0 / 3, 2.0 / 3, 1.0 / 4, 3.0 / 4}) {
        if (std::abs(share - fraction) * apart(ground, a, b) < kFractionReach) {
            return a + fraction * (b - a);
        }
    }
    return a + 0.01 * std::round(100 * share) * (b - a);
}

std::optional<Snapped> onMember(const Ground& ground, const SnapRequest& request, Vec2 world) {
    const Truss& truss = ground.truss;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Member& member = truss.members[i];
        const Vec2 a = truss.joints[member.a.at()].at;
        const Vec2 b = truss.joints[member.b.at()].at;
        const bool own = member.a == request.moving || member.b == request.moving ||
                         (request.from && (*request.from == a || *request.from == b));
        if (own || ground.view.camera.scale * distanceToSegment(world, a, b) > request.slack / 2) {
            continue;
        }
        const Vec2 at = placeOnMember(ground, a, b, world);
        if (at != a && at != b) {
            return Snapped{{{}, at, MemberId{static_cast<int>(i)}}, {SnapKind::Member, {}}};
        }
    }
    return std::nullopt;
}

std::optional<Snapped> inLine(const Ground& ground, const SnapRequest& request, Vec2 world) {
    std::optional<Vec2> below;  // a joint vertically below or above
    std::optional<Vec2> beside; // and one level with it
    for (std::size_t i = 0; i < ground.truss.joints.size(); ++i) {
        const Vec2 at = ground.truss.joints[i].at;
        if (static_cast<int>(i) == request.moving.index) {
            continue;
        }
        const double scale = ground.view.camera.scale;
        if (scale * std::abs(at.x - world.x) < kGuideReach &&
            (!below || std::abs(at.y - world.y) < std::abs(below->y - world.y))) {
            below = at;
        }
        if (scale * std::abs(at.y - world.y) < kGuideReach &&
            (!beside || std::abs(at.x - world.x) < std::abs(beside->x - world.x))) {
            beside = at;
        }
    }
    if (!below && !beside) {
        return std::nullopt;
    }
    Snapped snapped;
    const Vec2 rounded = snapToGrid(ground.view, world);
    snapped.end.at = {below ? below->x : rounded.x, beside ? beside->y : rounded.y};
    snapped.snap.kind = SnapKind::Aligned;
    for (const std::optional<Vec2>& joint : {below, beside}) {
        if (joint) {
            snapped.snap.guides.emplace_back(*joint, snapped.end.at);
        }
    }
    return snapped;
}

// The member whose length is closest to this one, if within reach.
MemberId likeLength(const Ground& ground, double wanted) {
    MemberId like;
    double least = kGuideReach;
    for (std::size_t i = 0; i < ground.truss.members.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        const double off = ground.view.camera.scale *
                           std::abs(length(memberVector(ground.truss, member)) - wanted);
        if (off < least) {
            least = off;
            like = member;
        }
    }
    return like;
}

std::optional<Snapped> byAngleAndLength(const Ground& ground, Vec2 from, Vec2 world) {
    const Vec2 drawn = world - from;
    const double size = length(drawn);
    if (size == 0) {
        return std::nullopt;
    }
    const double degrees =
        kDegreesApart * std::round(toDegrees(std::atan2(drawn.y, drawn.x)) / kDegreesApart);
    const Vec2 way = directionOf(degrees);
    const bool angled = ground.view.camera.scale * std::abs(cross(way, drawn)) < kGuideReach;
    const double along = angled ? dot(way, drawn) : size;
    const MemberId like = likeLength(ground, along);
    if (!angled && !like.valid()) {
        return std::nullopt;
    }
    const double reach = like.valid() ? length(memberVector(ground.truss, like))
                                      : roundToStep({along, 0}, ground.view.gridStep / 100).x;
    Snapped snapped;
    snapped.end.at = from + reach * (angled ? way : (1 / size) * drawn);
    snapped.snap.kind = like.valid() ? SnapKind::EqualLength : SnapKind::Angle;
    snapped.snap.guides.emplace_back(from, snapped.end.at);
    snapped.snap.like = like;
    if (like.valid()) {
        const Member& member = ground.truss.members[like.at()];
        snapped.snap.guides.emplace_back(ground.truss.joints[member.a.at()].at,
                                         ground.truss.joints[member.b.at()].at);
    }
    return snapped;
}

Snapped atPlace(const Ground& ground, Vec2 at, SnapKind kind) {
    return {{jointAt(ground.truss, at), at}, {kind, {}}};
}

} // namespace

Snapped snapTo(const Truss& truss, const View& shown, const SnapRequest& request) {
    const Ground ground{truss, shown};
    const Vec2 world = toWorld(shown.camera, request.pixel);
    View view = shown;
    if (request.freely) {
        view.snapToGrid = false;
        return atPlace(ground, snapToGrid(view, world), SnapKind::Free);
    }
    if (const auto joint = onJoint(ground, request, world)) {
        return *joint;
    }
    if (const auto member = onMember(ground, request, world)) {
        return *member;
    }
    if (view.snapToGrid) {
        return atPlace(ground, snapToGrid(view, world), SnapKind::Grid);
    }
    if (const auto aligned = inLine(ground, request, world)) {
        return *aligned;
    }
    if (request.from) {
        if (const auto guided = byAngleAndLength(ground, *request.from, world)) {
            return *guided;
        }
    }
    return atPlace(ground, snapToGrid(view, world), SnapKind::Free);
}

Vec2 snapToGrid(const View& view, Vec2 world) {
    return roundToStep(world, view.snapToGrid ? view.gridStep : view.gridStep / 100);
}

Vec2 roundToStep(Vec2 world, double step) {
    // Uses the whole number of steps per unit: 3 tenths give 0.3 and not 3 × 0.1.
    const double perUnit = std::round(1 / step);
    if (step < 1 && std::abs(perUnit * step - 1) < kHair) {
        return {std::round(world.x * perUnit) / perUnit, std::round(world.y * perUnit) / perUnit};
    }
    return {std::round(world.x / step) * step, std::round(world.y / step) * step};
}

MoveJoints shifted(const Truss& truss, const View& view, const std::vector<JointId>& joints,
                   Vec2 by) {
    MoveJoints edit;
    edit.joints = joints;
    for (const JointId joint : joints) {
        edit.to.push_back(roundToStep(truss.joints[joint.at()].at + by, kHair * view.gridStep));
    }
    return edit;
}

} // namespace gusset
