#pragma once
// The words and figures on the board, in the faces of the theme.

#include "canvas/scene/scene.hpp"
#include "ui/theme.hpp"

#include <span>

namespace gusset {

// Size in CSS px, as drawLabels draws it: the MeasureText for buildScene.
[[nodiscard]] Vec2 measureLabel(const Ui&, const std::string& text, LabelKind kind);

// Onto the board's draw list, in device pixels; backed labels get a patch of the board's paper.
void drawLabels(ImDrawList&, const Ui&, std::span<const LabelMark>);

// The edge of the loupe over a finger, if there is one.
void drawLoupeRim(ImDrawList&, const Ui&, const Scene&);

} // namespace gusset
