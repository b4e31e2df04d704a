#pragma once
// An equation of equilibrium as a student builds it: for each force that acts on a body, whether it
// is in the equation, with which sign, and times what.

#include "classroom/marking/free_bodies.hpp"
#include "hand/paper/working.hpp"

#include <vector>

namespace gusset {

enum class Multiplier { Whole, Sine, Cosine, Arm }; // of the force's angle with the horizontal
struct BuiltTerm {
    int sign = 0; // 0: the force is not in the equation
    Multiplier by = Multiplier::Whole;
    double arm = 0; // length units, not negative
};

struct AskedSum {
    EquationKind kind = EquationKind::SumX; // SumX, SumY or SumMoments
    JointId about;                          // of SumMoments
    bool clockwise = false;                 // which sense of rotation is positive
    double metre = 1;                       // of a length unit
};

enum class TermVerdict { Right, Missing, NotInIt, WrongSign, WrongMultiplier, WrongArm };

// Of each force of the part, in its order. Member forces are drawn away from the body, reactions
// along their positive direction, loads as they act. An arm is right within 1 %. Precondition: as
// many terms as the part has forces.
[[nodiscard]] std::vector<TermVerdict> judgeTerms(const Structure&, const PartOfTruss&,
                                                  const AskedSum&, const std::vector<BuiltTerm>&);

} // namespace gusset
