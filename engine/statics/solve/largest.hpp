#pragma once
// The members with the largest forces.

#include "statics/solve/solution.hpp"

namespace gusset {

struct LargestForces { // invalid ids where no member is in tension, or none in compression
    MemberId tension;
    MemberId compression;
};
// Among equal forces (to kZeroForce, so that the last digit does not decide between members that
// symmetry makes equal) the first member. Precondition: the solution is solved.
[[nodiscard]] LargestForces largestForces(const Solution&);

} // namespace gusset
