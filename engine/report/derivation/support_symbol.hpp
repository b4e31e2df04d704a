#pragma once
// The sign of a support in a drawing.

#include "model/truss/truss.hpp"
#include "report/sketch/sketch.hpp"

namespace gusset {

struct SupportReach { // from the joint to the ground
    Vec2 way;         // unit vector, y down
    double depth = 0; // px
};
// A triangle on the ground, or on wheels that let it roll along the ground. `tip`: the joint; its
// lines belong to `thing`.
SupportReach drawSupport(Sketch&, Vec2 tip, const Support&, int thing = kNoThing);

} // namespace gusset
