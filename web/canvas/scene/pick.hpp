#pragma once
// What lies under a point of the board. Joints before loads and supports before members; the slack
// is a finger's or a mouse's.

#include "app/state/state.hpp"

#include <functional>

namespace gusset {

[[nodiscard]] Hit pick(const AppState&, Vec2 pixel, double slack);
[[nodiscard]] Hit pickJoint(const AppState&, Vec2 pixel, double slack);
// The same in a model that is not the one shown, as an eraser needs it in mid-stroke.
[[nodiscard]] Hit pickIn(const Truss&, const Camera&, Vec2 pixel, double slack);
// Where on a segment its nearest place to the point is, 0 at a and 1 at b; and how far that is.
[[nodiscard]] double shareAlong(Vec2 point, Vec2 a, Vec2 b);
[[nodiscard]] double distanceToSegment(Vec2 point, Vec2 a, Vec2 b);
// The joints for whose place, CSS px, this holds, and the members between them.
[[nodiscard]] Things thingsWhere(const AppState&, const std::function<bool(Vec2 pixel)>&);
// Everything whose joints lie within the box of two opposite corners, CSS px.
[[nodiscard]] Things thingsInBox(const AppState&, Vec2 corner, Vec2 opposite);
// The members that a line on the board crosses, CSS px.
[[nodiscard]] Things membersAcross(const AppState&, Vec2 from, Vec2 to);

} // namespace gusset
