#pragma once
// What lies under a point of the board. Joints take precedence over loads, and supports over
// members; the slack is that of a finger or a mouse.

#include "app/state/state.hpp"

#include <functional>

namespace gusset {

[[nodiscard]] Hit pick(const AppState&, Vec2 pixel, double slack);
// The same in a model other than the one shown, as the eraser needs in mid-stroke.
[[nodiscard]] Hit pickIn(const Truss&, const Camera&, Vec2 pixel, double slack);
// The position along a segment of its nearest place to the point, 0 at a and 1 at b; and the
// distance to it.
[[nodiscard]] double shareAlong(Vec2 point, Vec2 a, Vec2 b);
[[nodiscard]] double distanceToSegment(Vec2 point, Vec2 a, Vec2 b);
// The joints whose position in CSS px satisfies this, and the members between them.
[[nodiscard]] Things thingsWhere(const AppState&, const std::function<bool(Vec2 pixel)>&);
// Everything whose joints lie within the box with these opposite corners, CSS px.
[[nodiscard]] Things thingsInBox(const AppState&, Vec2 corner, Vec2 opposite);
// The members that a line on the board crosses, CSS px.
[[nodiscard]] Things membersAcross(const AppState&, Vec2 from, Vec2 to);

} // namespace gusset
