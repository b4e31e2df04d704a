#pragma once
// Several things selected by one stroke around them: a freehand line, closed by a straight one from
// its end to its start, takes what lies inside it; a straight stroke is the diagonal of a box.

#include "app/state/state.hpp"

namespace gusset {

// Extends the stroke to this place, CSS px.
void goOnAround(std::vector<Vec2>& line, Vec2 pixel);
// Straight enough to mean a box.
[[nodiscard]] bool isDiagonal(const std::vector<Vec2>& line);
// The joints inside, and the members with both ends inside.
[[nodiscard]] Things thingsEnclosed(const AppState&, const std::vector<Vec2>& line);
[[nodiscard]] Things united(Things, const Things& more); // without duplicates
// The symmetric difference.
[[nodiscard]] Things toggled(Things, const Things& change);

} // namespace gusset
