#pragma once
// The displacement method: joint displacements from the stiffness of the members, and everything
// else from them. The degrees of freedom of a joint with a roller are rotated to the roller's
// direction, so that supports are exactly rigid, with no large number in place of infinity. The
// matrix is factored as L·D·Lᵀ in 2×2 blocks, one per joint, row by row (T. A. Davis, ACM Trans.
// Math. Software 31 (2005) 587–591), straight from the members: it is never assembled. Forces are
// refined iteratively from their residuals (C. B. Moler, J. ACM 14 (1967) 316–321). Method: e.g. W.
// McGuire, R. H. Gallagher, R. D. Ziemian, Matrix Structural Analysis, 2nd ed., 2000, ch. 3–5.

#include "statics/equilibrium/equilibrium.hpp"
#include "statics/equilibrium/joint_pattern.hpp"
#include "statics/equilibrium/trust.hpp"
#include "statics/matrix/wide.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace gusset {

// How the supports of one joint hold it.
struct HeldJoint {
    Vec2 first{1, 0}; // unit vector; the second direction is 90° anticlockwise from it
    bool firstHeld = false;
    bool secondHeld = false;
    Vec2 settled; // m, the displacement that the supports impose, along the held directions
};

template <class Scalar>
struct BlockOf { // 2×2, by rows
    Scalar a{};
    Scalar b{};
    Scalar c{};
    Scalar d{};
};

// The scalar is double, or Wide where double is too narrow.
template <class Scalar>
struct StiffnessOf {
    std::vector<HeldJoint> holds; // one per joint
    std::vector<int> lowerRows;   // of each entry below the diagonal, by columns
    std::vector<BlockOf<Scalar>> lower;
    std::vector<BlockOf<Scalar>> inverse; // of the diagonal blocks
    double scale = 1;                     // factor applied to the bars' stiffnesses: a power of two
    double weakest = 1; // smallest pivot relative to the stiffness of the bars at its joint; if it
                        // is not positive, the matrix is singular to the scalar's precision
};
using Stiffness = StiffnessOf<double>;
using WideStiffness = StiffnessOf<Wide>;

// The held directions of each joint. Settlements that contradict each other give an issue.
[[nodiscard]] Outcome<std::vector<HeldJoint>> heldJointsOf(const Truss&, const Structure&);

// How the support force at a joint is shared among its restraints: a vector for each, to be
// multiplied by that force. The sum of squares of the reactions is a minimum, as supports are rigid
// and nothing else determines how several at one joint share.
[[nodiscard]] std::vector<Vec2> reactionSharesOf(const Structure&, const std::vector<HeldJoint>&);

// Precondition: every bar has a stiffness, and the pattern fits.
[[nodiscard]] Stiffness factorStiffness(const Structure&, const JointPattern&,
                                        std::vector<HeldJoint>);
[[nodiscard]] WideStiffness factorWide(const Structure&, const JointPattern&,
                                       std::vector<HeldJoint>);

struct Response {
    std::vector<Vec2> displacements; // m, one per joint
    EquilibriumForces found;
    Trust trust; // of the forces, and of the displacements where requested
};

// The response to a unit load on each of several joints in turn, judged together: the errors are
// relative to the largest of all.
struct UnitResponses {
    std::vector<Response> each; // without a trust of their own
    Trust trust;
    double largest = 0;  // N, of any load, reaction or force
    double residual = 0; // the worst of each
    double farthest = 0; // m, of any displacement, by components
};

// Which part of a response is judged.
enum class Judge { Forces, All };

// The response to loads, N, one per joint, and to the structure's settlements, temperature changes
// and misfits. Precondition: the stiffness is not singular (weakest > 0).
[[nodiscard]] Response respond(const Structure&, const JointPattern&, const Stiffness&,
                               const std::vector<Vec2>& loads, Judge = Judge::All);
[[nodiscard]] Response respond(const Structure&, const JointPattern&, const WideStiffness&,
                               const std::vector<Vec2>& loads, Judge = Judge::All);

// The response to 1 N down on each of these joints in turn. Precondition: the same, and no strains
// or settlements.
[[nodiscard]] UnitResponses respondToUnits(const Structure&, const JointPattern&, const Stiffness&,
                                           const std::vector<JointId>&, Judge);
[[nodiscard]] UnitResponses respondToUnits(const Structure&, const JointPattern&,
                                           const WideStiffness&, const std::vector<JointId>&,
                                           Judge);

// Solves K·u = right in place, by joints, in global directions; the held directions of `right` are
// ignored and come back as zero.
void solveDisplacements(const JointPattern&, const Stiffness&, std::vector<Vec2>& right);

} // namespace gusset
