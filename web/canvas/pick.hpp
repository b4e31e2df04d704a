#pragma once
// What lies under a point of the board. Joints before loads and supports before members; the slack
// is a finger's or a mouse's.

#include "app/state.hpp"

namespace gusset {

[[nodiscard]] Hit pick(const AppState&, Vec2 pixel, double slack);
[[nodiscard]] Hit pickJoint(const AppState&, Vec2 pixel, double slack);
// The same in a model that is not the one shown, as an eraser needs it in mid-stroke.
[[nodiscard]] Hit pickIn(const Truss&, const Camera&, Vec2 pixel, double slack);
[[nodiscard]] Things thingsOf(const Hit&);
// Everything whose joints lie within the box of two opposite corners, CSS px.
[[nodiscard]] Things thingsInBox(const AppState&, Vec2 corner, Vec2 opposite);

// Where a new or dragged joint would land: a joint near by, else the grid, else the point itself.
[[nodiscard]] MemberEnd snap(const AppState&, Vec2 pixel, double slack, JointId notThis = {});
// A place without a joint, to the grid if the view says so, else to a hundredth of it: typed
// figures stay short either way.
[[nodiscard]] Vec2 snapToGrid(const View&, Vec2 world);
[[nodiscard]] Vec2 roundToStep(Vec2 world, double step);

} // namespace gusset
