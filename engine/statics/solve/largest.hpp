#pragma once
// Which members carry the most.

#include "statics/solve/solution.hpp"

namespace gusset {

struct LargestForces { // invalid ids where nothing is pulled, or nothing pushed
    MemberId tension;
    MemberId compression;
};
// Of equal forces (to kZeroForce, so that the last digit does not choose among members that
// symmetry makes equal) the first member. Precondition: the solution is solved.
[[nodiscard]] LargestForces largestForces(const Solution&);

} // namespace gusset
