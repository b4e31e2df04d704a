#pragma once
// The free body that a student works on: its loads, its reactions and the cut members, with the
// values that the student has found so far and the names of the others.

#include "classroom/practice/chosen_body.hpp"
#include "report/formula/notation.hpp"
#include "report/sketch/sketch.hpp"

#include <optional>
#include <vector>

namespace gusset {

// By the number of the unknown, force units, as the student has them.
using OwnValues = std::vector<std::optional<double>>;

// Marks of a force belong to its number in the part; member forces are drawn away from the body.
// Nothing of a body with too many joints to be read. Preconditions: the notation is that of the
// blankPaper of the loads, and the part is its drawnPart.
[[nodiscard]] std::optional<Sketch> practiceSketch(const Notation&, const PartOfTruss&,
                                                   const OwnValues&, SketchPaper);

[[nodiscard]] Symbol symbolOf(const Structure&, const ActingForce&); // F_AB, A_x, P_B

} // namespace gusset
