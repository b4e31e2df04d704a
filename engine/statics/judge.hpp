#pragma once
// How far the forces and displacements of an equilibrium solution can be trusted; see
// statics/trust, and stiffness_judge for stiffness solutions.

#include "statics/equilibrium.hpp"
#include "statics/trust.hpp"

namespace gusset {

// Half a unit in the last place of 1, 2^-53: by so much of itself rounding changes a double at
// most.
inline constexpr double kHalfPlace = 1.1102230246251565e-16;

// By how much rounding of the coordinates, and of what is computed from them, may change what a bar
// with this force exerts on its joints. N, by components.
[[nodiscard]] Vec2 roundingOf(const Structure&, const Bar&, double force);

// A load of 1 at the joint changes the force that is judged by as much as `weight`, by components:
// kept if it is the largest so far.
void noteWeight(Trust&, int joint, Vec2 weight);

// What rounding may have changed in the balance of each joint under forces that `balance` found: N,
// x and y of each joint in turn.
[[nodiscard]] std::vector<double> changesOf(const Structure&, const std::vector<Vec2>& loads,
                                            const EquilibriumForces&);
// What is largest in any of several solutions, each number by itself and without its sign: given in
// place of one solution, it judges them together.
void widen(EquilibriumForces& most, const EquilibriumForces&);
void widen(std::vector<Vec2>& most, const std::vector<Vec2>&);
void widen(std::vector<double>& most, const std::vector<double>&);

// Of forces, given what rounding may have changed in their balance.
[[nodiscard]] Trust judgeForces(const Structure&, const Equilibrium&,
                                const std::vector<double>& changes, const EquilibriumForces&);

// Bound of the error of any displacement over the largest, given that of the forces over theirs.
[[nodiscard]] double judgeDisplacements(const Structure&, const Equilibrium&,
                                        const EquilibriumForces&, double forceError,
                                        const std::vector<Vec2>& displacements);

} // namespace gusset
