#pragma once
// Where a joint lands that is drawn or dragged: on a joint near by, on a member (which it splits),
// on the grid; with the grid off in line with other joints, at a multiple of 15 degrees, as long as
// another member.

#include "app/state/state.hpp"

namespace gusset {

struct SnapRequest {
    Vec2 pixel;
    double slack = 8;         // CSS px, of the pointer
    std::optional<Vec2> from; // the other end of what is being drawn
    JointId moving;           // the joint that is being dragged, which does not stop itself
    bool freely = false;      // nothing but short figures
};
struct Snapped {
    MemberEnd end;
    Snap snap;
};
[[nodiscard]] Snapped snapTo(const Truss&, const View&, const SnapRequest&);

// A place without a joint, to the grid if the view says so, else to a hundredth of it: figures stay
// short either way.
[[nodiscard]] Vec2 snapToGrid(const View&, Vec2 world);
[[nodiscard]] Vec2 roundToStep(Vec2 world, double step);
// The joints moved by so much, without the noise of binary sums: 0.1 and 0.2 make 0.3.
[[nodiscard]] MoveJoints shifted(const Truss&, const View&, const std::vector<JointId>&, Vec2 by);

} // namespace gusset
