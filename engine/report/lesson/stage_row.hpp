#pragma once
// One row of words on the stage, in which fractions are set as on paper: one number over the other.
// Private to report/lesson.

#include "report/sketch/sketch.hpp"

namespace gusset {

[[nodiscard]] double rowHeightOf(const RichLine&, double size);
[[nodiscard]] double rowWidthOf(const RichLine&, double size); // an upper bound
// `at`: its left end, at half its height.
void setRow(Sketch&, const RichLine&, Vec2 at, SketchInk, double size);

} // namespace gusset
