#pragma once
// Other loads, and other places of the pin and the roller. Private to classroom/variants.

#include "classroom/variants/dice.hpp"
#include "classroom/variants/variants.hpp"

#include <cstdint>

namespace gusset {

// Moves the loads along members with the members' new lengths.
void keepShares(const Truss& before, Truss& after);
void throwPlaces(Truss&, Dice&);
void throwDirections(Truss&, Dice&); // keeps sizes
// Small whole numbers for sizes, in the old directions; a common multiple follows (sizesUpTo).
void throwRatios(Truss&, Dice&);
void throwSupports(Truss&, Dice&);

// Whether all sizes of loads are multiples of this step.
[[nodiscard]] bool areLoadsInSteps(const Truss&, double step);

// Multiplies all loads so that their sizes are like those of `before`, by a multiple of this whole
// number, or of a power of ten times it. False if there is none of that size.
[[nodiscard]] bool throwSize(const Truss& before, Truss&, std::int64_t multiple, Dice&);

} // namespace gusset
