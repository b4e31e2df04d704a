#pragma once
// Displacements of a truss whose forces are known by equilibrium alone: they are the joint
// movements that fit the members' changes of length and the supports' settlements, vᵀ·A = e with
// the equilibrium matrix A (virtual work; e.g. Timoshenko & Young, Theory of Structures, 2nd ed.,
// 1965, ch. 6). No stiffness is inverted, so long trusses lose no digits.

#include "statics/equilibrium/equilibrium.hpp"

namespace gusset {

// Changes of length, m: by force, where a bar has a stiffness, and by temperature and misfit.
[[nodiscard]] std::vector<double> elongationsOf(const Structure&,
                                                const std::vector<double>& forces);

// m, a joint each. Precondition: the structure is determinate.
[[nodiscard]] std::vector<Vec2> displacementsOf(const Structure&, const Equilibrium&,
                                                const std::vector<double>& elongations);

[[nodiscard]] double strainEnergyOf(const Structure&, const std::vector<double>& forces); // J

} // namespace gusset
