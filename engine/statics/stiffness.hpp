#pragma once
// The displacement method: joint displacements from the stiffness of the members, and from them
// everything else. Freedoms of a joint with a roller are turned into the roller's direction, so
// that supports are rigid and no number stands in for infinity. The matrix is factored as L·D·Lᵀ in
// 2×2 blocks, a joint a block, row by row (T. A. Davis, ACM Trans. Math. Software 31 (2005)
// 587–591), straight from the members: it is never assembled. Method: e.g. W. McGuire, R. H.
// Gallagher, R. D. Ziemian, Matrix Structural Analysis, 2nd ed., 2000, ch. 3–5.

#include "statics/equilibrium.hpp"
#include "statics/joint_pattern.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace gusset {

// How the supports of one joint hold it.
struct Hold {
    Vec2 first{1, 0}; // unit vector; the second direction stands 90° anticlockwise of it
    bool firstHeld = false;
    bool secondHeld = false;
    Vec2 settled; // m, the displacement that the supports impose, along the held directions
};

struct Block { // 2×2, by rows
    double a = 0;
    double b = 0;
    double c = 0;
    double d = 0;
};

struct Stiffness {
    std::vector<Hold> holds;    // a joint each
    std::vector<int> lowerRows; // of each entry below the diagonal, by columns
    std::vector<Block> lower;
    std::vector<Block> inverse; // of the diagonal blocks
    double weakest = 1; // smallest pivot against the stiffness of the bars at its joint; ≤ 0: none
    JointId weakestJoint;
};

// Supports of each joint as directions held. Settlements that contradict each other give an issue.
[[nodiscard]] Outcome<std::vector<Hold>> holdsOf(const Truss&, const Structure&);

// Precondition: every bar has a stiffness, the pattern fits.
[[nodiscard]] Stiffness factorStiffness(const Structure&, const JointPattern&, std::vector<Hold>);

struct Response {
    std::vector<Vec2> displacements; // m, a joint each
    EquilibriumForces found;
};
// To loads, N, a joint each, and to the structure's settlements, temperature changes and misfits.
// Precondition: the stiffness is not singular (weakest > 0).
[[nodiscard]] Response respond(const Structure&, const JointPattern&, const Stiffness&,
                               const std::vector<Vec2>& loads);

// Solves K·u = right in place, by joints, in global directions; held directions of `right` are left
// out of account and come back as zero.
void solveDisplacements(const JointPattern&, const Stiffness&, std::vector<Vec2>& right);

} // namespace gusset
