#pragma once
// What can be made of a selection: its mirror image, copies along a chord, a rotation. Edits for
// buttons and menus; none if no joint or member is selected. The members between the joints and
// their loads go with them.

#include "app/state/state.hpp"

#include <optional>

namespace gusset {

enum class Side { Left, Right, Above, Below };

// A copy mirrored about that edge of the selection: half a truss becomes a whole one.
[[nodiscard]] std::optional<Edit> mirrorSelection(const AppState&, Side);
// This many copies, each one step further than the last. Precondition: times ≥ 1. None for a zero
// step, since the copies would coincide with the original.
[[nodiscard]] std::optional<Edit> repeatSelection(const AppState&, Vec2 step, int times);
// The width of the selection, so that adjacent panels share their posts; its height if it is a
// single post.
[[nodiscard]] Vec2 ownStep(const AppState&);
// Rotates the selected joints about the centre of their box, in degrees anticlockwise.
[[nodiscard]] std::optional<Edit> turnSelection(const AppState&, double degrees);
[[nodiscard]] std::optional<Edit> shiftSelection(const AppState&, Vec2 by);
[[nodiscard]] std::optional<Edit> copySelection(const AppState&, Vec2 by);
// A copy whose bounding box has its lower left corner there.
[[nodiscard]] std::optional<Edit> copySelectionTo(const AppState&, Vec2 place);

// "5 joints, 7 members": the selection as counted on the board.
[[nodiscard]] std::string selectionText(const AppState&);

} // namespace gusset
