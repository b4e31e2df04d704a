#pragma once
// An equation of equilibrium as a student builds it: for each force that acts on a body, whether it
// is in the equation, with which sign, and times what.

#include "classroom/exercise/written_equation.hpp"
#include "classroom/marking/free_bodies.hpp"

#include <vector>

namespace gusset {

struct AskedSum {
    SumKind kind = SumKind::X;
    JointId about{};        // of moments
    bool clockwise = false; // which sense of rotation is positive
    double metre = 1;       // of a length unit
};

enum class TermVerdict { Right, Missing, NotInIt, WrongSign, WrongMultiplier, WrongArm };

// Of each force of the part, in its order. Member forces are drawn away from the body, reactions
// along their positive direction, loads as they act. An arm is right within 1 %. Precondition: as
// many terms as the part has forces.
[[nodiscard]] std::vector<TermVerdict> judgeTerms(const Structure&, const PartOfTruss&,
                                                  const AskedSum&, const std::vector<BuiltTerm>&);
// What is right of each force, an axis-parallel one without sine or cosine.
[[nodiscard]] std::vector<BuiltTerm> rightTerms(const Structure&, const PartOfTruss&,
                                                const AskedSum&);

// A sum that holds no unknown but this one: of horizontal or vertical forces, or of moments about a
// joint; none where there is no such sum.
[[nodiscard]] std::optional<AskedSum> sumLeavingOnly(const Structure&, const PartOfTruss&,
                                                     const std::vector<bool>& known, int unknown,
                                                     AskedSum like);

} // namespace gusset
