#pragma once
// How far the forces and displacements of an equilibrium solution can be trusted; see
// statics/equilibrium/trust, and stiffness_judge for stiffness solutions.

#include "core/tolerance.hpp"
#include "statics/equilibrium/equilibrium.hpp"
#include "statics/equilibrium/trust.hpp"
#include "statics/matrix/norm_estimate.hpp"

#include <cmath>
#include <cstddef>
#include <vector>

namespace gusset {

// Half a unit in the last place of 1, 2^-53: the largest relative change that rounding makes to a
// double.
inline constexpr double kHalfPlace = 1.1102230246251565e-16;

// How much rounding of the coordinates, and of what is computed from them, may change the force
// components that a bar with this force exerts on its joints. N.
[[nodiscard]] Vec2 roundingOf(const Structure&, const Bar&, double force);

// Whether changes of half a unit in the last place of the largest force, at every joint, may be
// amplified so much that the truss must be close to a mechanism, or very large.
[[nodiscard]] inline bool mayAmplify(double error) { return error > kAmplified * kHalfPlace; }

// Goes from the row of one force to the load with the largest weight in it, then to the largest
// force that this load causes, and so on, as long as the value grows. Forces and reactions are
// numbered in one list, the `members` forces first. weightsOf(force) gives the weight in it of a
// load of 1 at each component of a joint; forcesUnder(component) gives the forces that such a load
// causes.
template <class WeightsOf, class ForcesUnder>
void seekAmplification(std::size_t force, std::size_t members, WeightsOf weightsOf,
                       ForcesUnder forcesUnder, Trust& trust) {
    constexpr int kSteps = 2; // enough to find a large one, if not the largest
    for (int step = 0; step < kSteps; ++step) {
        const std::vector<double> weights = weightsOf(force);
        const std::size_t component = norm_estimate::largestAt(weights);
        trust.amplification = std::abs(weights[component]);
        trust.joint = JointId{static_cast<int>(component / 2)};
        trust.member = force < members ? MemberId{static_cast<int>(force)} : MemberId{};
        const std::vector<double> forces = forcesUnder(component);
        force = norm_estimate::largestAt(forces);
        if (!(std::abs(forces[force]) > trust.amplification * (1 + kZeroForce))) {
            return;
        }
    }
}

// The forces, followed by the reactions.
[[nodiscard]] std::vector<double> inOneRow(const EquilibriumForces&);

// How much rounding may have changed the balance of each joint under forces that `balance` found:
// N, x and y of each joint in turn.
[[nodiscard]] std::vector<double> changesOf(const Structure&, const std::vector<Vec2>& loads,
                                            const EquilibriumForces&);
// The elementwise largest absolute values over several solutions: used in place of one solution,
// they judge all of them together.
void widen(EquilibriumForces& most, const EquilibriumForces&);
void widen(std::vector<Vec2>& most, const std::vector<Vec2>&);
void widen(std::vector<double>& most, const std::vector<double>&);

// For forces, given how much rounding may have changed their balance. An error below kWholeFile may
// be that of loads at every joint.
[[nodiscard]] Trust judgeForces(const Structure&, const Equilibrium&,
                                const std::vector<double>& changes, const EquilibriumForces&);

// Trust::error for the given changes alone, so that a joint without load contributes nothing.
// Precondition: some force is not zero.
[[nodiscard]] double sharpErrorOf(const Equilibrium&, const std::vector<double>& changes,
                                  const EquilibriumForces&);

// Bound on the error of any displacement relative to the largest, given that of the forces relative
// to theirs.
[[nodiscard]] double judgeDisplacements(const Structure&, const Equilibrium&,
                                        const EquilibriumForces&, double forceError,
                                        const std::vector<Vec2>& displacements);

} // namespace gusset
