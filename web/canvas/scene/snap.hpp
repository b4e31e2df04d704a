#pragma once
// Where a drawn or dragged joint lands: on a nearby joint, on a member (which it splits), on the
// grid; or, with the grid off, aligned with other joints, at a multiple of 15 degrees, or at the
// length of another member.

#include "app/state/state.hpp"

namespace gusset {

struct SnapRequest {
    Vec2 pixel;
    double slack = 8;         // CSS px around the pointer
    std::optional<Vec2> from; // the other end of what is being drawn
    JointId moving;           // the joint being dragged, which must not snap to itself
    bool freely = false;      // no snapping, only rounding
};
struct Snapped {
    MemberEnd end;
    Snap snap;
};
[[nodiscard]] Snapped snapTo(const Truss&, const View&, const SnapRequest&);

// For a place without a joint: to the grid if the view says so, else to a hundredth of it, so that
// coordinates have few digits either way.
[[nodiscard]] Vec2 snapToGrid(const View&, Vec2 world);
[[nodiscard]] Vec2 roundToStep(Vec2 world, double step);
// The joints moved by this much, without binary rounding errors: 0.1 and 0.2 make 0.3.
[[nodiscard]] MoveJoints shifted(const Truss&, const View&, const std::vector<JointId>&, Vec2 by);

} // namespace gusset
