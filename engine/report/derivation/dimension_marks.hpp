#pragma once
// Dimensions under and beside a part of the truss: the distances between the lines on which forces
// act, which are the lever arms of its moments.

#include "report/derivation/body_forces.hpp"

#include <vector>

namespace gusset {

// `places`: px, of the joints of the body in a sketch that has been fitted without a margin. Leaves
// out the stops between the ends where they are too close to write at.
void addDimensions(const Notation&, const FreeBody&, const std::vector<Vec2>& places, Sketch&);

} // namespace gusset
