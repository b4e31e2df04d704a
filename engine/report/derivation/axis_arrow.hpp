#pragma once
// The direction n, along which a sum of forces is taken, on the drawing of its free body.

#include "hand/paper/working.hpp"
#include "report/sketch/sketch.hpp"

#include <optional>

namespace gusset {

// The direction of a sum that is taken on the body of this step, here or further on.
[[nodiscard]] std::optional<Vec2> axisOn(const Working&, std::size_t step);

struct AxisArrow { // px
    Vec2 tail;
    Vec2 tip;
};
void draw(Sketch&, const AxisArrow&); // thin and dashed
[[nodiscard]] SketchWords axisName(Vec2 tip, double size);

} // namespace gusset
