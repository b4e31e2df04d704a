#pragma once
// Small drawings of the engine (report/sketch/sketch) in the theme's inks and the embedded
// typefaces, as wide as the column or narrower.

#include "report/sketch/sketch.hpp"
#include "ui/theme.hpp"

#include <optional>

namespace gusset {

struct SketchLook {
    bool readable = false; // responds to a pointer on it; a finger may drag across it
    double largest = 1;    // largest magnification of its own size
    double tallest = 0;    // greatest height, CSS px; 0: unlimited
};

// Its height in device px in a column of this width.
[[nodiscard]] float sketchHeight(const Ui&, const Sketch&, const SketchLook&, float room);
// At ImGui's cursor, which moves below it. Returns where a pointer reads it, px of the sketch; none
// if it is not pressed.
[[nodiscard]] std::optional<Vec2> drawSketch(const Ui&, const char* id, const Sketch&,
                                             const SketchLook& = {});

} // namespace gusset
