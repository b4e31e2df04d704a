#pragma once
// Several things selected by one stroke around them: a free line takes what lies inside it, closed
// by a straight one from its end to its beginning; a plain stroke across is the diagonal of a box.

#include "app/state/state.hpp"

namespace gusset {

// The stroke goes on to this place, CSS px.
void goOnAround(std::vector<Vec2>& line, Vec2 pixel);
// So straight that it means a box.
[[nodiscard]] bool isDiagonal(const std::vector<Vec2>& line);
// The joints inside, and the members with both ends inside.
[[nodiscard]] Things thingsEnclosed(const AppState&, const std::vector<Vec2>& line);
[[nodiscard]] Things united(Things, const Things& more); // nothing twice
// What is in both is out, what is in one is in.
[[nodiscard]] Things toggled(Things, const Things& change);

} // namespace gusset
