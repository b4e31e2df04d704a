#pragma once
// Lines of text and formulas on the stage, at one size, broken to its width. Private to
// report/lesson.

#include "report/results/table.hpp"
#include "report/sketch/sketch.hpp"

#include <vector>

namespace gusset {

// Puts lines below each other; returns the height that they take.
double placeLines(Sketch&, const std::vector<WorkingLine>&, Vec2 corner, double width, double size);
[[nodiscard]] double heightOf(const std::vector<WorkingLine>&, double width, double size);
[[nodiscard]] double widestRow(const std::vector<WorkingLine>&, double width, double size);

// A table at a font size; nothing is drawn beyond `rows` of it.
[[nodiscard]] Sketch tableSketch(const TextTable&, double size, std::size_t firstRow,
                                 std::size_t rows);

} // namespace gusset
