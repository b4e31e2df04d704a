#pragma once
// The working of a truss as a person writes it on paper, as data: a list of steps whose equations
// are lists of terms. Text, notebook and HTML are rendered from it (report/). Numbers are in the
// model's own units, as they would be on paper. Every equation can be evaluated from its own terms.

#include "core/ids.hpp"
#include "core/phrase.hpp"
#include "hand/paper/exact_values.hpp"
#include "hand/paper/load_shares.hpp"
#include "model/truss/truss.hpp"
#include "statics/solve/solution.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace gusset {

// A named quantity of the working.
enum class SymbolKind {
    MemberForce, // F_AB; member
    Reaction,    // of a restraint: A_x, A_y, or R_A along a roller; restraint (index), joint
    Load,        // on a joint, along an axis: P_A, P_Ax; joint, index 0 for the horizontal part
    Angle, // of a member with the horizontal: α, β … (acute); index numbers them in order of use
    Letter, // X or Y (index 0 or 1), for a force by which others are expressed for a while
};
struct Symbol {
    SymbolKind kind = SymbolKind::MemberForce;
    MemberId member{};       // MemberForce
    RestraintId restraint{}; // Reaction: index in Structure::restraints
    JointId joint{};         // Reaction and Load: where
    int index = -1;          // Angle: 0 is α; Letter: 0 is X; Load: 0 is horizontal, 1 vertical

    friend bool operator==(const Symbol&, const Symbol&) = default;
};

// One factor of a term.
enum class FactorKind {
    Number,      // a bare number (a count, a ratio's value)
    Load,        // size of a given load, force units; symbol
    Arm,         // lever arm, length units
    Known,       // a symbol found before; value is its value
    Unknown,     // a symbol not yet found; value is the result of this working
    Sine,        // of Symbol Angle; value is the sine
    Cosine,      // of Symbol Angle
    AxisCosine,  // cosine of the angle between a member (or roller direction) and an axis: value is
                 // that cosine, ≥ 0
    Ratio,       // a slope ratio rise/length: numerator over denominator
    TurnSine,    // sine of the angle between a force and the line that a SumAlong is taken across;
                 // numerator holds that angle in degrees
    Letter,      // X or Y; value is what is found for it in the end
    Coefficient, // a number worked out, without a unit of force
    Amount,      // the same with a unit of force, or of moment
    Bracket,     // a sum of terms in brackets; value is its value
};
// Written as a name before its angle.
[[nodiscard]] constexpr bool isFunctionOfAngle(FactorKind kind) {
    return kind == FactorKind::Sine || kind == FactorKind::Cosine ||
           kind == FactorKind::AxisCosine || kind == FactorKind::TurnSine;
}
struct Term;
struct Factor {
    FactorKind kind = FactorKind::Number;
    double value = 0;
    Symbol symbol{};      // Load, Known, Unknown, Letter, Sine, Cosine
    double numerator = 0; // Ratio and AxisCosine: value = numerator / denominator
    double denominator = 1;
    bool horizontal = true;    // AxisCosine: the axis is horizontal
    std::vector<Term> terms{}; // Bracket
};

struct Term {
    int sign = 1; // +1 or −1, as written before the term
    std::vector<Factor> factors;
};
// sign × product of the factors' values.
[[nodiscard]] double valueOf(const Term&);

enum class EquationKind { SumMoments, SumX, SumY, SumAlong };
struct Equation {
    EquationKind kind = EquationKind::SumY;
    JointId about{};             // SumMoments: the centre is at this joint, if valid
    Vec2 point{};                // SumMoments: the centre, length units
    Vec2 along{};                // SumAlong: the unit vector
    std::vector<JointId> body{}; // the free body, where it is not that of the step
    std::vector<Term> terms;     // their sum is zero
};
[[nodiscard]] double valueOf(const Equation&);      // 0 when it balances
[[nodiscard]] const Factor* unknownIn(const Term&); // null if it has none
[[nodiscard]] double coefficientOf(const Equation&, const Symbol& unknown);
[[nodiscard]] double constantOf(const Equation&); // the sum of all terms without an unknown

// A line of the solving of equations together: both sides in numbers.
struct Multiple {
    double factor = 1;
    int number = 1; // of the equation: (1), (2)
};
struct NumberLine {           // 3 · (1) − 4 · (2):  5 F_BC = −108
    std::vector<Multiple> of; // the numbered equations that it comes from
    std::vector<Term> left;
    std::vector<Term> right;
};

// An unknown found from an equation (or from two together).
enum class FoundAs { Tension, Compression, Zero, AsAssumed, Opposite };
struct Found {
    Symbol symbol{};
    double value = 0; // force units
    FoundAs as = FoundAs::AsAssumed;
    int drawn = 1; // −1: a member force drawn as compression, so that its equations hold −value
    bool rounded = false; // the class carries rounded values, and this one was
};

// tan α = rise / run, and what follows from it.
struct AngleLine {
    Symbol angle{};
    MemberId member{};               // the first of them; none if only a roller has this direction
    std::vector<MemberId> members{}; // all with this slope
    RestraintId restraint{};         // a roller whose reaction has this slope, if any
    double rise = 0;                 // ≥ 0, length units; for a roller alone: the sine
    double run = 0;
    double length = 0;
    double degrees = 0; // acute, with the horizontal
};

enum class StepKind {
    Counting,        // m + r against 2j
    WholeBody,       // all forces on the truss as a whole
    Geometry,        // angles or direction cosines of the inclined members
    ReactionMoment,  // one reaction by moments
    ReactionSum,     // one reaction by a sum of forces
    ReactionPair,    // reactions from simultaneous equations
    ZeroByRule,      // zero-force members by inspection
    Symmetry,        // that there is symmetry, or what follows from it
    JointIntro,      // moving to a joint, with its unknowns
    JointEquation,   // one equation of a joint, one unknown
    JointPair,       // two equations together, two unknowns
    SectionIntro,    // cutting the truss in two: members are the cut ones, body is the part kept
    SectionEquation, // one equation of the part, one unknown
    Simultaneous,    // the equations of several joints together
    ClosingSums,     // left-over equations, which must come to zero
    Summary,         // all forces and reactions
};

// "2 m to the right of B and 3 m above it": where a point off the truss lies.
struct PlaceBeside {
    JointId joint;
    Vec2 from{}; // length units; a component that is only rounding error is 0
};
struct GivenForce { // force units
    double size = 0;
};
struct Degrees {
    double angle = 0;
};
struct TurnedAngle { // α + β or α − β; with one angle only, that angle
    Symbol first{};
    Symbol second{};
    bool minus = false;
    double degrees = 0;
};
struct FactoredCase { // of a combination
    double factor = 1;
    std::string name;
};
// A value in the sentence of a remark: a count, a name, a force that is only rounding error (force
// units), a direction, and things that the class has its own ways of writing.
using RemarkValue =
    std::variant<int, std::string, double, Vec2, JointId, std::vector<JointId>,
                 std::vector<MemberId>, Symbol, std::vector<Symbol>, PlaceBeside, GivenForce,
                 Degrees, TurnedAngle, Factor, std::vector<FactoredCase>, std::vector<std::string>>;
struct RemarkPart {
    std::string_view name;
    RemarkValue value;
};
// A sentence with its parts, as data.
struct Remark {
    const char* english = ""; // of its phrase
    std::vector<RemarkPart> parts{};
};
[[nodiscard]] inline Remark remarkThat(Phrase<> phrase) { return {phrase.english}; }
template <PartName... Names>
[[nodiscard]] Remark remarkThat(Phrase<Names...> phrase,
                                const PartsOf<RemarkValue, Names...>& parts) {
    Remark remark{phrase.english};
    for (const auto& part : parts) {
        remark.parts.push_back({kPartNames<Names...>[part.name.index], part.value});
    }
    return remark;
}
template <PartName... Names>
[[nodiscard]] bool says(const Remark& remark, Phrase<Names...> phrase) {
    return remark.english == phrase.english;
}
// Precondition: the remark has that part, with a value of this kind.
template <class Value>
[[nodiscard]] const Value& partOf(const Remark& remark, std::string_view name) {
    const auto has = [&](const RemarkPart& part) { return part.name == name; };
    return std::get<Value>(std::find_if(remark.parts.begin(), remark.parts.end(), has)->value);
}

// One of a step's results, where a solving arrives at it.
struct FoundHere {
    std::size_t at = 0;     // in Step::found
    std::vector<Term> by{}; // what gives it, if that is written before it: a + b X
};
// What stands under a step's equations until its last unknown is known.
using SolvingLine = std::variant<Remark, Equation, NumberLine, FoundHere>;

struct Step {
    StepKind kind = StepKind::Counting;
    JointId joint{};                     // the joint that the step is about, if any
    std::vector<JointId> body;           // the free body: one joint, several, or all
    std::vector<MemberId> members{};     // to highlight on the board, unknowns first
    std::vector<RestraintId> restraints; // reactions to highlight
    std::vector<AngleLine> angles;
    std::vector<Equation> equations;
    std::vector<Found> found;
    std::vector<SolvingLine> solving{}; // of equations together; holds all of `found`, if any
    std::vector<Symbol> uses{};         // found earlier and used here, including zero ones
    std::vector<Remark> remarks;
    std::vector<LoadShares> shares{}; // WholeBody: of loads that do not act on joints
};

struct Working {
    bool complete = false; // all forces and reactions are found
    std::vector<Step> steps;
    Structure structure;     // for the restraints that symbols refer to
    std::vector<Vec2> loads; // on each joint, force units
    Counting counting;
    std::vector<Mechanism> mechanisms; // how it moves, if it does
    ExactValues exact;                 // if the class uses exact numbers and they exist
};

// Precondition: the solution is solve(truss, choice)'s. For a truss that is not statically
// determinate, the working holds the counting and a remark that says why it ends there. It finds
// its own values from its own equations; the solution only tells whether there is a working at all.
[[nodiscard]] Working workOut(const Truss&, const LoadChoice&, const Solution&);
// The paper before the first step: structure, loads, and one step of geometry with every angle, by
// the letters that workOut() gives them.
[[nodiscard]] Working blankPaper(const Truss&, const LoadChoice&);

// The same, but the method of joints takes these joints before any other, in this order; one whose
// forces are all known when its turn comes is passed over.
struct OutOfTurn { // more unknown forces than a joint gives, or two in one line
    JointId joint{};
    std::vector<Symbol> unknowns{};
};
struct OrderedWorking {
    Working working{};
    std::optional<OutOfTurn> refused{}; // the first joint that could not be taken in its turn
};
[[nodiscard]] OrderedWorking workOutInOrder(const Truss&, const LoadChoice&, const Solution&,
                                            std::vector<JointId> order);

} // namespace gusset
