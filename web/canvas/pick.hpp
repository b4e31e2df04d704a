#pragma once
// What lies under a point of the board. Joints before loads and supports before members; the slack
// is a finger's or a mouse's.

#include "app/state.hpp"

namespace gusset {

[[nodiscard]] Hit pick(const AppState&, Vec2 pixel, double slack);
[[nodiscard]] Hit pickJoint(const AppState&, Vec2 pixel, double slack);
// Where a new or dragged joint would land: a joint near by, else the grid, else the point itself.
[[nodiscard]] MemberEnd snap(const AppState&, Vec2 pixel, double slack, JointId notThis = {});

} // namespace gusset
