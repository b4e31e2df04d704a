#pragma once
// Small drawings of the engine (report/sketch/sketch) in the theme's inks and our typefaces, as
// wide as the column or smaller.

#include "report/sketch/sketch.hpp"
#include "ui/theme.hpp"

#include <optional>

namespace gusset {

struct SketchLook {
    bool readable = false; // answers a pointer that lies on it; a finger may drag across it
    double largest = 1;    // it is not drawn larger than this many times its own size,
    double tallest = 0;    // nor higher than so many CSS px; 0: as high as it comes
};

// Device px that it takes in a column so wide.
[[nodiscard]] float sketchHeight(const Ui&, const Sketch&, const SketchLook&, float room);
// At ImGui's cursor, which moves below it. Gives back where a pointer reads it, px of the sketch;
// nothing when none is pressed on it.
[[nodiscard]] std::optional<Vec2> drawSketch(const Ui&, const char* id, const Sketch&,
                                             const SketchLook& = {});

} // namespace gusset
