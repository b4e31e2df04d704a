#pragma once
// Equilibrium of the joints: for every joint Σ F·e + Σ R·d = −P, with two rows per joint and a
// column per member and per scalar reaction. Method: e.g. Timoshenko & Young, Theory of Structures,
// 2nd ed., 1965, ch. 2; Pellegrino & Calladine, Int. J. Solids Structures 22 (1986) 409–428, for
// rank, mechanisms and redundants.

#include "statics/equilibrium/structure.hpp"
#include "statics/matrix/factors.hpp"
#include "statics/matrix/refactoring.hpp"

#include <optional>

namespace gusset {

// The equilibrium matrix. Rows: x and y of each joint; columns: bars, then restraints. Four entries
// per bar and two per restraint, some of them zero.
[[nodiscard]] SparseMatrix<double> equilibriumMatrix(const Structure&);

// The factored matrix of one structure: gives its rank, and solves for any loads.
struct Equilibrium {
    Factors<double> factors;
    Counting counting;
};
[[nodiscard]] Equilibrium factorEquilibrium(const Structure&);

// The same for new numbers, with the pivots that the plan keeps. Where these won't do, it runs a
// full elimination and clears the plan. Precondition: the same joints are connected and supported
// as before.
void factorAgain(const Structure&, Refactoring& plan, Equilibrium&);

struct EquilibriumForces {
    std::vector<double> forces;    // N
    std::vector<double> reactions; // N
    double largest = 0;            // N, as in Solution
    double residual = 0;           // as in Solution
};

// The forces that balance these loads; with redundants, those with all free unknowns at zero.
// Nothing when the truss is a mechanism that the loads set in motion.
[[nodiscard]] std::optional<EquilibriumForces> balance(const Structure&, const Equilibrium&,
                                                       const std::vector<Vec2>& loads);

// The forces under 1 N down on each of these joints in turn. Precondition: the structure is
// statically determinate.
[[nodiscard]] std::vector<EquilibriumForces> balanceUnitLoads(const Structure&, const Equilibrium&,
                                                              const std::vector<JointId>& joints);

// The largest absolute component: the scale against which a force is zero.
[[nodiscard]] double largestOf(const std::vector<Vec2>& loads, const EquilibriumForces&);

// The largest component of the residual, relative to `largest`.
[[nodiscard]] double residualOf(const Structure&, const std::vector<Vec2>& loads,
                                const EquilibriumForces&);

// Residual at each joint, N: loads plus everything that members and supports exert.
[[nodiscard]] std::vector<Vec2> lackOfEquilibrium(const Structure&, const std::vector<Vec2>& loads,
                                                  const EquilibriumForces&);

} // namespace gusset
