#pragma once
// The working of a truss as a person writes it on paper, as data: a list of steps whose equations
// are lists of terms. Text, notebook and HTML are renderings of these (report/). Numbers are in the
// model's own units, as they would be on paper. Every equation can be evaluated from its own terms.

#include "core/ids.hpp"
#include "core/phrase.hpp"
#include "hand/paper/exact_values.hpp"
#include "model/truss/truss.hpp"
#include "statics/solve/solution.hpp"

#include <algorithm>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace gusset {

// A quantity with a name in the working.
enum class SymbolKind {
    MemberForce, // F_AB; member
    Reaction,    // of a restraint: A_x, A_y, or R_A along a roller; restraint (index), joint
    Angle, // of a member with the horizontal: α, β … (acute); index numbers them in order of use
};
struct Symbol {
    SymbolKind kind = SymbolKind::MemberForce;
    MemberId member{};  // MemberForce
    int restraint = -1; // Reaction: index in Structure::restraints
    JointId joint{};    // Reaction: where
    int index = -1;     // Angle: 0 is α

    friend bool operator==(const Symbol&, const Symbol&) = default;
};

// One factor of a term.
enum class FactorKind {
    Number,     // a bare number (a count, a ratio's value)
    Load,       // size of a given load, force units
    Arm,        // lever arm, length units
    Known,      // a symbol found before; value is its value
    Unknown,    // a symbol yet to be found; value is what this working finds it to be
    Sine,       // of Symbol Angle; value is the sine
    Cosine,     // of Symbol Angle
    AxisCosine, // cosine of the angle between a member (or roller direction) and an axis: value is
                // that cosine, ≥ 0
    Ratio,      // a slope ratio rise/length: numerator over denominator
    TurnCosine, // cosine of the angle between a force and the direction of a SumAlong; numerator
                // holds that acute angle in degrees
};
struct Factor {
    FactorKind kind = FactorKind::Number;
    double value = 0;
    Symbol symbol{};      // Known, Unknown, Sine, Cosine
    double numerator = 0; // Ratio and AxisCosine: value = numerator / denominator
    double denominator = 1;
    bool horizontal = true; // AxisCosine: with which axis
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
[[nodiscard]] double valueOf(const Equation&); // 0 when it balances

// An unknown that an equation (or two together) gave.
enum class FoundAs { Tension, Compression, Zero, AsAssumed, Opposite };
struct Found {
    Symbol symbol{};
    double value = 0; // force units
    FoundAs as = FoundAs::AsAssumed;
    int drawn = 1; // −1: a member force drawn pushing, so that its equations hold −value
};

// tan α = rise / run, and what follows from it.
struct AngleLine {
    Symbol angle{};
    MemberId member{};               // the first of them; none for a roller's direction alone
    std::vector<MemberId> members{}; // all that are as steep
    int restraint = -1;              // a roller whose reaction is as steep, if one
    double rise = 0;                 // ≥ 0, length units; of a roller alone: the sine
    double run = 0;
    double length = 0;
    double degrees = 0; // acute, with the horizontal
};

enum class StepKind {
    Counting,        // m + r against 2j
    WholeBody,       // what acts on the truss as a whole
    Geometry,        // angles or direction cosines of the inclined members
    ReactionMoment,  // one reaction by moments
    ReactionSum,     // one reaction by a sum of forces
    ReactionPair,    // reactions by simultaneous equations
    ZeroByRule,      // zero-force members by inspection
    Symmetry,        // that it is there, or what follows from it
    JointIntro,      // taking a joint, with its unknowns
    JointEquation,   // one equation of a joint, one unknown
    JointPair,       // two equations together, two unknowns
    SectionIntro,    // cutting the truss in two: members are the cut ones, body is the part kept
    SectionEquation, // one equation of the part, one unknown
    Simultaneous,    // the equations of several joints together
    Check,           // left-over equations, which must come to zero
    Summary,         // all forces and reactions
};

// The rule by which members are read to carry nothing.
enum class ZeroRule {
    None,
    TwoMembersNoLoad, // two members not in line meet at a joint without load or support: both zero
    ThreeMembersTwoInLine, // three members, two in line, no load: the third is zero
    LoadAlongOne,          // two members, load (or reaction) in line with one: the other is zero
    LoneMember,            // what is left is one member and no load
};

// "2 m to the right and 3 m up of B": where a point off the truss lies.
struct PlaceBeside {
    JointId joint;
    Vec2 from{}; // length units
};
// What a remark puts into its sentence: a count, a name, a force that is but rounding (force
// units), a direction, and what the class has its own ways of writing.
using RemarkValue = std::variant<int, std::string, double, Vec2, JointId, std::vector<JointId>,
                                 std::vector<MemberId>, Symbol, std::vector<Symbol>, PlaceBeside>;
struct RemarkPart {
    std::string_view name;
    RemarkValue value;
};
// A sentence with its parts, in data.
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
    return std::string_view(remark.english) == phrase.english;
}
// Precondition: the remark has that part, with a value of this kind.
template <class Value>
[[nodiscard]] const Value& partOf(const Remark& remark, std::string_view name) {
    const auto has = [&](const RemarkPart& part) { return part.name == name; };
    return std::get<Value>(std::find_if(remark.parts.begin(), remark.parts.end(), has)->value);
}

struct Step {
    StepKind kind = StepKind::Counting;
    JointId joint{};                 // the joint that it speaks of, if one
    std::vector<JointId> body;       // the free body: one joint, several, or all
    std::vector<MemberId> members{}; // to light on the board, unknowns first
    std::vector<int> restraints;     // reactions to light
    std::vector<AngleLine> angles;
    std::vector<Equation> equations;
    std::vector<Found> found;
    std::vector<Symbol> uses{}; // found before and relied on, also those that are zero
    ZeroRule rule = ZeroRule::None;
    std::vector<Remark> remarks;
};

struct Working {
    bool complete = false; // reaches every force and reaction
    std::vector<Step> steps;
    Structure structure;     // for the restraints that symbols name
    std::vector<Vec2> loads; // on each joint, force units
    Counting counting;
    ExactValues exact; // where the class wants exact numbers and they can be had
};

// Precondition: the solution is solve(truss, choice)'s. For a truss that isn't determinate the
// working holds the counting and a remark that says why it ends there. It finds its own values by
// its own equations; the solution is only used to know whether there is a working at all.
[[nodiscard]] Working workOut(const Truss&, const LoadChoice&, const Solution&);

} // namespace gusset
