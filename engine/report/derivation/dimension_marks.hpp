#pragma once
// Dimensions below and beside a part of the truss: the distances between the lines of action of its
// forces, which are the lever arms of the moments.

#include "report/derivation/body_forces.hpp"

#include <vector>

namespace gusset {

// `places`: px, of the joints of the body in a sketch that has been fitted without a margin. Leaves
// out intermediate points that are too close together to label.
void addDimensions(const Notation&, const FreeBody&, const std::vector<Vec2>& places, Sketch&);

} // namespace gusset
