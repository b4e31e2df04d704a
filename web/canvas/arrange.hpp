#pragma once
// What can be made of a selection: its mirror image, repetitions along a chord, a turn. Edits for
// buttons and menus; nothing when no joint or member is selected. With joints go the members
// between them and their loads.

#include "app/state.hpp"

#include <optional>

namespace gusset {

enum class Side { Left, Right, Above, Below };

// A copy, mirrored about the selection's edge at that side: half a truss becomes a whole one.
[[nodiscard]] std::optional<Edit> mirrorSelection(const AppState&, Side);
// So many copies, each as far on as the selection is wide or high: panels that share their posts.
// Precondition: times ≥ 1.
[[nodiscard]] std::optional<Edit> repeatSelection(const AppState&, Side, int times);
// The selected joints turned about the middle of their box, degrees anticlockwise.
[[nodiscard]] std::optional<Edit> turnSelection(const AppState&, double degrees);

} // namespace gusset
