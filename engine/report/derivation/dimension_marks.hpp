#pragma once
// Dimensions below and beside a drawing of the truss, or of a part of it.

#include "report/formula/notation.hpp"
#include "report/sketch/sketch.hpp"

#include <vector>

namespace gusset {

struct MeasuredPoint {
    Vec2 px;                 // where it is drawn, y down
    Vec2 at;                 // where it is, length units
    bool level = false;      // the chain below the drawing stops at it
    bool upright = false;    // so does the chain beside it
    bool farLevel = false;   // drawn nearer than it is: the chain to it is broken
    bool farUpright = false; // likewise
};
// In a sketch that has been fitted without a margin. Each chain also stops at the outermost points;
// it leaves out intermediate ones that are too close together to label.
void addDimensions(const Notation&, const std::vector<MeasuredPoint>&, Sketch&);

} // namespace gusset
