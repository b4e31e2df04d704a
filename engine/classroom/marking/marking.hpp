#pragma once
// Marks with carried errors: a value is judged by what follows from the student's own other values,
// in whichever order they can have been found. The rule of marks is stated in
// phrases/classroom/marking. It follows published mark schemes: one mark for the method and one for
// the accuracy of each equation; a mark is lost where a slip first occurs, and nowhere after it
// (e.g. Pearson Edexcel, Mechanics M1, 2015; Scottish Qualifications Authority, Mathematics:
// general marking principles).

#include "classroom/exercise/answers.hpp"
#include "classroom/exercise/key.hpp"
#include "hand/paper/working.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace gusset {

enum class Verdict {
    Right,
    Unsupported, // right, but not what the student's other values give
    Carried,     // wrong, but what the student's other values give, or of a slip marked elsewhere
    Slip,        // wrong, and it does not follow
    Blank,       // or only half given, so that it has no value
};

enum class SlipKind {
    LeftOut,        // a force is missing from an equation, or from all of the body's
    WrongSign,      // of one term, in one equation
    SineForCosine,  // in one component of a force, or in both
    NotResolved,    // an inclined force put in whole
    ToOneBar,       // two unknown members, each found as if it were alone
    ReactionTurned, // right size, wrong direction
    BySymmetry,     // equal reactions where they are not equal
    WrongArm,       // of a moment
    EarlierSign,    // an earlier value put in with the opposite sign, in all equations
    WrongSense,     // right size, tension for compression or the reverse
    ZeroMisjudged,  // said to carry nothing
    WrongFactor,    // 2, 10, 1000 or g = 9.81, times or divided
    DigitsSwapped,  // two digits next to each other
};
inline constexpr int kSlipKinds = 13;

// An equation of a body in a student's own numbers: forces along x or y (along +x and up positive),
// or moments about a joint (anticlockwise positive). Member forces are drawn away from the body as
// tension, reactions along their positive direction, loads as they act.
struct OwnTerm {
    std::optional<MemberOrRestraint> of{}; // none: the load on a joint
    JointId at{};                          // where it acts on the body
    Vec2 along{};                          // unit vector for a positive value
    double value = 0;                      // force units, as written; a load's size
    double factor = 0; // what the sum takes it times: a component of `along`, or an arm with the
                       // sign of its sense, length units
};
struct OwnEquation {
    EquationKind kind = EquationKind::SumY; // SumX, SumY or SumMoments
    JointId about{};                        // of SumMoments
    std::vector<OwnTerm> terms{};           // only those that the sum holds
    double left = 0;        // what the sum comes to, and would be 0: force units, or times length
    MemberOrRestraint of{}; // the answer that it is solved for
    double written = 0;     // force units
    double gives = 0;       // for that answer, with the other values as written: force units
};

struct Slip {
    std::vector<JointId> body; // on which it was made; none if that can't be told
    std::optional<SlipKind> kind;
    std::vector<SlipKind> fits; // all that give what was written; `kind` only if one does
    // Wrong answers that it explains, the first of them being marked for it.
    std::vector<MemberOrRestraint> answers;
    // Sums of the body that hold one of these answers and are not 0 with the values of the sheet.
    std::vector<OwnEquation> equations;
};

struct MarkedForce {
    MemberOrRestraint of;
    bool isAsked = false;
    Verdict verdict = Verdict::Blank;
    std::optional<double> written{}; // force units, as valueOf
    double truth = 0;                // force units
    // From the student's own other values, by one equation of the body, or by all that there are:
    // none if they give different values.
    std::optional<double> expected{};
    std::vector<JointId> body{};       // on which that was found
    std::optional<std::size_t> slip{}; // in Marking::slips
    double marks = 0;
    double outOf = 0;
};

struct MarkedQuestion {
    double marks = 0;
    double outOf = 0;
    bool isByHand = false; // steps: not marked here, and in no sum; out of what the exercise gives
    decltype(Question::what) what{};
};

struct Marking {
    std::vector<MarkedForce> forces; // each restraint, then each member
    std::vector<Slip> slips;
    std::vector<MarkedQuestion> questions; // of the exercise, in order
    double marks = 0;
    double outOf = 0;
    // Whether the slips are the least set that explains the sheet. No small set does for a sheet
    // that is wrong nearly everywhere: then they are as they come, one for each value.
    bool isOfFewSlips = true;
};

// What is the same for all sheets of one exercise. The truss and the exercise must outlive it.
class MarkingScheme {
public:
    // Precondition: the key is keyOf(truss, exercise)'s.
    MarkingScheme(const Truss&, const Exercise&, AnswerKey);
    ~MarkingScheme();
    MarkingScheme(MarkingScheme&&) noexcept;
    MarkingScheme& operator=(MarkingScheme&&) noexcept;

    // Precondition: as many answers as blankAnswers has. Errors are carried only where equilibrium
    // alone gives the forces; in any other truss, a wrong value is a slip.
    [[nodiscard]] Marking mark(const Answers&) const;

private:
    struct Basis;
    std::unique_ptr<Basis> basis_;
};

} // namespace gusset
