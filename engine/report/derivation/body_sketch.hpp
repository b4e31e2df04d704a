#pragma once
// Free-body diagrams of the working: true directions, known values and unknown symbols, and at
// inclined forces the angle or slope triangle in the class's style. Words never lie on one another
// or on an arrow.

#include "report/formula/notation.hpp"
#include "report/sketch/sketch.hpp"

#include <vector>

namespace gusset {

// A body with more joints than this is not drawn: nobody could read it.
inline constexpr std::size_t kLargestBody = 120;

// The bodies that a step looks at for the first time, empty where it goes on with an earlier one.
// `step` indexes working.steps.
[[nodiscard]] std::vector<Sketch> bodySketches(const Notation&, std::size_t step,
                                               SketchPaper = SketchPaper::Page);

} // namespace gusset
