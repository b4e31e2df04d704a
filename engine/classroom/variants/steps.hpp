#pragma once
// How much there is to do in an exercise, counted from its working. Computed from the truss, never
// measured on students, so it is not called difficulty.

#include "statics/equilibrium/structure.hpp"
#include "statics/solve/exact.hpp"

namespace gusset {

struct StepsOf {
    int steps = 0;     // of the working, those that find a reaction or a force
    int chain = 0;     // joints in a row of which each needs the one before, the longest such row
    int couplings = 0; // steps in which several equations are solved together
    int zeros = 0;     // members that carry nothing
    int inclined = 0;  // members neither level nor upright that carry a force

    bool operator==(const StepsOf&) const = default;
};

// Precondition: the exact solution is solved, and that of the same truss and loads.
[[nodiscard]] StepsOf stepsOf(const Truss&, const LoadChoice&, const ExactSolution&);
// Whether a class would find the two alike.
[[nodiscard]] bool areAlike(const StepsOf&, const StepsOf&);

} // namespace gusset
