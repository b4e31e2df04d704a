#include "statics/solve/largest.hpp"

#include "core/tolerance.hpp"

namespace gusset {
namespace {

// `sign` 1 for tension, −1 for compression.
MemberId largestBy(const Solution& solution, double sign) {
    MemberId largest;
    double most = 0;
    for (std::size_t i = 0; i < solution.forces.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        const double force = sign * solution.forces[i];
        if (force > most * (1 + kZeroForce) && senseOf(solution, member) != Sense::Zero) {
            largest = member;
            most = force;
        }
    }
    return largest;
}

} // namespace

LargestForces largestForces(const Solution& solution) {
    return {largestBy(solution, 1), largestBy(solution, -1)};
}

} // namespace gusset
