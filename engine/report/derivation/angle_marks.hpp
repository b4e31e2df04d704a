#pragma once
// How inclined forces of a sketch show their direction: an arc with its letter, or a slope triangle
// with its sides, as the class writes angles.

#include "report/formula/notation.hpp"
#include "report/sketch/sketch.hpp"

#include <vector>

namespace gusset {

struct AngleMark {
    Vec2 corner; // px
    Vec2 way;    // unit vector, y down: of the inclined force, out from the corner
    const AngleLine* line = nullptr;
    double radius = 30; // px of its arc, or to its triangle; more where others are in the way
};
struct AngleWords { // for the caller to find room for
    SketchWords words;
    Vec2 towards;
};

// Px by which each further mark in one quarter stands farther from the corner.
[[nodiscard]] double nextMark(AngleStyle);
// What the working says of a direction (a unit vector); null for level and plumb ones, and for one
// that it has not measured.
[[nodiscard]] const AngleLine* angleLineOf(const Working&, Vec2 along);
[[nodiscard]] std::vector<AngleWords> drawAngles(const Notation&, std::vector<AngleMark>, Sketch&);

} // namespace gusset
