#pragma once
// Equilibrium of the joints: for every joint Σ F·e + Σ R·d = −P, two rows a joint, a column a
// member and a scalar reaction. Method: e.g. Timoshenko & Young, Theory of Structures, 2nd ed.,
// 1965, ch. 2; Pellegrino & Calladine, Int. J. Solids Structures 22 (1986) 409–428, for rank,
// mechanisms and redundants.

#include "statics/solution.hpp"

#include <optional>

namespace gusset {

struct EquilibriumForces {
    std::vector<double> forces;    // N
    std::vector<double> reactions; // N
    double residual = 0;           // as in Solution
};

// Rank, mechanisms and redundants of the equilibrium matrix. Mechanisms carry velocities, not yet
// words.
struct StructureReading {
    Counting counting;
    std::vector<Mechanism> mechanisms;
};
[[nodiscard]] StructureReading readStructure(const Structure&);

// Sparse LU. Nothing when the matrix is not square and regular to kRankPivot.
[[nodiscard]] std::optional<EquilibriumForces> solveEquilibrium(const Structure&,
                                                                const std::vector<Vec2>& loads);

// Largest |Σ force| over the joints, N.
[[nodiscard]] double lackOfEquilibrium(const Structure&, const std::vector<Vec2>& loads,
                                       const std::vector<double>& forces,
                                       const std::vector<double>& reactions);

} // namespace gusset
