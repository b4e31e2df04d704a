#pragma once
// How a sketch shows the direction of inclined forces: an arc with its letter, or a slope triangle
// with its sides, in the class's angle style.

#include "report/formula/notation.hpp"
#include "report/sketch/sketch.hpp"

#include <vector>

namespace gusset {

struct AngleMark {
    Vec2 corner; // px
    Vec2 way;    // unit vector, y down: direction of the inclined force, away from the corner
    const AngleLine* line = nullptr;
    double radius = 30; // px of its arc, or to its triangle; more where others are in the way
};
struct AngleWords { // for the caller to place
    SketchWords words;
    Vec2 towards;
};

// How many px farther from the corner each further mark in the same quadrant is drawn.
[[nodiscard]] double nextMark(AngleStyle);
// The working's angle line for a direction (a unit vector); null if the direction is horizontal or
// vertical, or if the working has not measured it.
[[nodiscard]] const AngleLine* angleLineOf(const Working&, Vec2 along);
[[nodiscard]] std::vector<AngleWords> drawAngles(const Notation&, std::vector<AngleMark>, Sketch&);

} // namespace gusset
