#pragma once
// The displacement method: joint displacements from the stiffness of the members, and from them
// everything else. Freedoms of a joint with a roller are turned into the roller's direction, so
// that supports are rigid and no number stands in for infinity. The matrix is factored as L·D·Lᵀ in
// 2×2 blocks, a joint a block, row by row (T. A. Davis, ACM Trans. Math. Software 31 (2005)
// 587–591), straight from the members: it is never assembled. Forces are refined by their lack of
// equilibrium (C. B. Moler, J. ACM 14 (1967) 316–321). Method: e.g. W. McGuire, R. H.
// Gallagher, R. D. Ziemian, Matrix Structural Analysis, 2nd ed., 2000, ch. 3–5.

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
struct Hold {
    Vec2 first{1, 0}; // unit vector; the second direction stands 90° anticlockwise of it
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

// The scalar is double, or Wide where that is too narrow.
template <class Scalar>
struct StiffnessOf {
    std::vector<Hold> holds;    // a joint each
    std::vector<int> lowerRows; // of each entry below the diagonal, by columns
    std::vector<BlockOf<Scalar>> lower;
    std::vector<BlockOf<Scalar>> inverse; // of the diagonal blocks
    double scale = 1;   // what the bars' stiffnesses were multiplied by: a power of two
    double weakest = 1; // smallest pivot against the stiffness of the bars at its joint; if it is
                        // not positive the matrix is singular as far as its scalar can tell
};
using Stiffness = StiffnessOf<double>;
using WideStiffness = StiffnessOf<Wide>;

// Supports of each joint as directions held. Settlements that contradict each other give an issue.
[[nodiscard]] Outcome<std::vector<Hold>> holdsOf(const Truss&, const Structure&);

// What of a force that the supports of a joint must exert falls to each restraint, as a vector to
// multiply that force by: the sum of squares of the reactions is least, as supports are rigid and
// nothing else tells how several at one joint share.
[[nodiscard]] std::vector<Vec2> reactionSharesOf(const Structure&, const std::vector<Hold>&);

// Precondition: every bar has a stiffness, the pattern fits.
[[nodiscard]] Stiffness factorStiffness(const Structure&, const JointPattern&, std::vector<Hold>);
[[nodiscard]] WideStiffness factorWide(const Structure&, const JointPattern&, std::vector<Hold>);

struct Response {
    std::vector<Vec2> displacements; // m, a joint each
    EquilibriumForces found;
    Trust trust; // of the forces, and of the displacements where these are asked for
};

// To a unit load on each of several joints in turn, judged together: the errors are over the
// largest of all.
struct UnitResponses {
    std::vector<Response> each; // their own trust is not told
    Trust trust;
    double largest = 0;  // N, of any load, reaction or force
    double residual = 0; // the worst of each
    double farthest = 0; // m, of any displacement, by components
};

// What of a response is judged.
enum class Judge { Forces, All };

// To loads, N, a joint each, and to the structure's settlements, temperature changes and misfits.
// Precondition: the stiffness is not singular (weakest > 0).
[[nodiscard]] Response respond(const Structure&, const JointPattern&, const Stiffness&,
                               const std::vector<Vec2>& loads, Judge = Judge::All);
[[nodiscard]] Response respond(const Structure&, const JointPattern&, const WideStiffness&,
                               const std::vector<Vec2>& loads, Judge = Judge::All);

// To 1 N down on each of these joints in turn. Precondition: the same, and there are no strains and
// settlements.
[[nodiscard]] UnitResponses respondToUnits(const Structure&, const JointPattern&, const Stiffness&,
                                           const std::vector<JointId>&, Judge);
[[nodiscard]] UnitResponses respondToUnits(const Structure&, const JointPattern&,
                                           const WideStiffness&, const std::vector<JointId>&,
                                           Judge);

// Solves K·u = right in place, by joints, in global directions; held directions of `right` are left
// out of account and come back as zero.
void solveDisplacements(const JointPattern&, const Stiffness&, std::vector<Vec2>& right);

} // namespace gusset
