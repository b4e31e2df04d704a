#pragma once
// Equilibrium of the joints: for every joint Σ F·e + Σ R·d = −P, two rows a joint, a column a
// member and a scalar reaction. Method: e.g. Timoshenko & Young, Theory of Structures, 2nd ed.,
// 1965, ch. 2; Pellegrino & Calladine, Int. J. Solids Structures 22 (1986) 409–428, for rank,
// mechanisms and redundants.

#include "statics/equilibrium/structure.hpp"
#include "statics/matrix/factors.hpp"
#include "statics/matrix/refactoring.hpp"

#include <optional>

namespace gusset {

// The equilibrium matrix. Rows: x and y of each joint; columns: bars, then restraints. Four entries
// a bar and two a restraint, zeros among them.
[[nodiscard]] SparseMatrix<double> equilibriumMatrix(const Structure&);

// The matrix of one structure, eliminated: for its rank and for any loads.
struct Equilibrium {
    Factors<double> factors;
    Counting counting;
};
[[nodiscard]] Equilibrium factorEquilibrium(const Structure&);

// The same for other numbers in place of those that it was factored from, by the pivots that the
// plan keeps; a full elimination, and no plan any more, where they won't do. Precondition: the same
// joints are joined and held as before.
void factorAgain(const Structure&, Refactoring& plan, Equilibrium&);

struct EquilibriumForces {
    std::vector<double> forces;    // N
    std::vector<double> reactions; // N
    double largest = 0;            // N, as in Solution
    double residual = 0;           // as in Solution
};

// The forces that balance these loads; where there are redundants, the ones with all free unknowns
// at zero. Nothing when the truss is a mechanism that the loads set in motion.
[[nodiscard]] std::optional<EquilibriumForces> balance(const Structure&, const Equilibrium&,
                                                       const std::vector<Vec2>& loads);

// The forces under 1 N down on each of these joints in turn. Precondition: the structure is
// determinate.
[[nodiscard]] std::vector<EquilibriumForces> balanceUnitLoads(const Structure&, const Equilibrium&,
                                                              const std::vector<JointId>& joints);

// The largest size of any component: the scale against which a force is zero.
[[nodiscard]] double largestOf(const std::vector<Vec2>& loads, const EquilibriumForces&);

// The largest component of the lack of equilibrium over `largest`.
[[nodiscard]] double residualOf(const Structure&, const std::vector<Vec2>& loads,
                                const EquilibriumForces&);

// Lack of equilibrium at each joint, N: loads plus all that members and supports exert.
[[nodiscard]] std::vector<Vec2> lackOfEquilibrium(const Structure&, const std::vector<Vec2>& loads,
                                                  const EquilibriumForces&);

} // namespace gusset
