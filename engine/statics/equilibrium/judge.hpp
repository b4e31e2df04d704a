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

// Half a unit in the last place of 1, 2^-53: by so much of itself rounding changes a double at
// most.
inline constexpr double kHalfPlace = 1.1102230246251565e-16;

// By how much rounding of the coordinates, and of what is computed from them, may change what a bar
// with this force exerts on its joints. N, by components.
[[nodiscard]] Vec2 roundingOf(const Structure&, const Bar&, double force);

// Whether changes of half a unit in the last place of the largest force, at every joint, may come
// back so much larger that the truss must be close to a mechanism, or very large.
[[nodiscard]] inline bool mayAmplify(double error) { return error > kAmplified * kHalfPlace; }

// Goes from the row of one force to the load that weighs most in it, to the force that this load
// causes most of, and on, as long as that grows. Forces and reactions are counted in one row,
// `members` of them first. weightsOf(force) gives what a load of 1 at each component of a joint
// weighs in it, forcesUnder(component) what forces such a load causes.
template <class WeightsOf, class ForcesUnder>
void seekAmplification(std::size_t force, std::size_t members, WeightsOf weightsOf,
                       ForcesUnder forcesUnder, Trust& trust) {
    constexpr int kSteps = 2; // to what is large, if not the largest
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

// The forces and then the reactions.
[[nodiscard]] std::vector<double> inOneRow(const EquilibriumForces&);

// What rounding may have changed in the balance of each joint under forces that `balance` found: N,
// x and y of each joint in turn.
[[nodiscard]] std::vector<double> changesOf(const Structure&, const std::vector<Vec2>& loads,
                                            const EquilibriumForces&);
// What is largest in any of several solutions, each number by itself and without its sign: given in
// place of one solution, it judges them together.
void widen(EquilibriumForces& most, const EquilibriumForces&);
void widen(std::vector<Vec2>& most, const std::vector<Vec2>&);
void widen(std::vector<double>& most, const std::vector<double>&);

// Of forces, given what rounding may have changed in their balance. An error below kWholeFile may
// be that of loads at every joint.
[[nodiscard]] Trust judgeForces(const Structure&, const Equilibrium&,
                                const std::vector<double>& changes, const EquilibriumForces&);

// Trust::error of what is given alone: a joint without load is not off. Precondition: there are
// forces.
[[nodiscard]] double sharpErrorOf(const Equilibrium&, const std::vector<double>& changes,
                                  const EquilibriumForces&);

// Bound of the error of any displacement over the largest, given that of the forces over theirs.
[[nodiscard]] double judgeDisplacements(const Structure&, const Equilibrium&,
                                        const EquilibriumForces&, double forceError,
                                        const std::vector<Vec2>& displacements);

} // namespace gusset
