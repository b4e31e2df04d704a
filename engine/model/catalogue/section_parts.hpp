#pragma once
// A section as a sum of plane parts, each with its area, centroid and second moments about its own
// centroid, so that a thin wall loses no figures to the size of the whole. x runs along the breadth
// B, y along the height H; any consistent length.

#include "core/vec2.hpp"

#include <vector>

namespace gusset {

struct SectionPart {
    double area = 0; // negative: taken away
    Vec2 at;         // centroid
    double xx = 0;   // ∫ x² dA about the centroid, and so on
    double yy = 0;
    double xy = 0;
};

[[nodiscard]] SectionPart rectanglePart(Vec2 centre, Vec2 size);
[[nodiscard]] SectionPart ringPart(double outer, double wall); // around the origin, by its diameter
// Precondition: the corners go anticlockwise.
[[nodiscard]] SectionPart polygonPart(const std::vector<Vec2>& corners);
// What lies between the two sides of a corner and an arc of this radius that touches both: a fillet
// adds it to a hollow corner, a rounding takes it from a full one. `one` and `other` are the unit
// vectors of the sides, away from the corner, between 60° and 120° apart.
[[nodiscard]] SectionPart cornerPart(Vec2 corner, Vec2 one, Vec2 other, double radius);
[[nodiscard]] SectionPart taken(SectionPart); // the same, taken away

// The sum. Precondition: its area is positive.
[[nodiscard]] SectionPart sumOf(const std::vector<SectionPart>&);

} // namespace gusset
