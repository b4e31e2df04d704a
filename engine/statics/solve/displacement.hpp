#pragma once
// Displacements of a truss whose forces follow from equilibrium alone: the joint movements that fit
// the members' changes of length and the supports' settlements, vᵀ·A = e with the equilibrium
// matrix A (virtual work; e.g. Timoshenko & Young, Theory of Structures, 2nd ed., 1965, ch. 6). No
// stiffness matrix is inverted, so long trusses lose no digits.

#include "statics/equilibrium/equilibrium.hpp"

namespace gusset {

// Changes of length, m: from force, where a bar has a stiffness, and from temperature and misfit.
[[nodiscard]] std::vector<double> elongationsOf(const Structure&,
                                                const std::vector<double>& forces);

// m, one per joint. Precondition: the structure is statically determinate.
[[nodiscard]] std::vector<Vec2> displacementsOf(const Structure&, const Equilibrium&,
                                                const std::vector<double>& elongations);

[[nodiscard]] double strainEnergyOf(const Structure&, const std::vector<double>& forces); // J

} // namespace gusset
