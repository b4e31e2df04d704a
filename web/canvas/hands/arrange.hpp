#pragma once
// What can be made of a selection: its mirror image, repetitions along a chord, a turn. Edits for
// buttons and menus; nothing when no joint or member is selected. With joints go the members
// between them and their loads.

#include "app/state/state.hpp"

#include <optional>

namespace gusset {

enum class Side { Left, Right, Above, Below };

// A copy, mirrored about the selection's edge at that side: half a truss becomes a whole one.
[[nodiscard]] std::optional<Edit> mirrorSelection(const AppState&, Side);
// So many copies, each a step further on than the one before. Precondition: times ≥ 1. Nothing
// without a step, since they would fall on themselves.
[[nodiscard]] std::optional<Edit> repeatSelection(const AppState&, Vec2 step, int times);
// As far as the selection is wide, so that panels share their posts; as high when it is a post.
[[nodiscard]] Vec2 ownStep(const AppState&);
// The selected joints turned about the middle of their box, degrees anticlockwise.
[[nodiscard]] std::optional<Edit> turnSelection(const AppState&, double degrees);
[[nodiscard]] std::optional<Edit> shiftSelection(const AppState&, Vec2 by);
[[nodiscard]] std::optional<Edit> copySelection(const AppState&, Vec2 by);
// So that the lower left corner of its box comes to stand there.
[[nodiscard]] std::optional<Edit> copySelectionTo(const AppState&, Vec2 place);

// "5 joints, 7 members": what is selected, as it is counted on the board.
[[nodiscard]] std::string selectionText(const AppState&);

} // namespace gusset
