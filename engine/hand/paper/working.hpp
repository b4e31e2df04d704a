#pragma once
// The working of a truss as a person writes it on paper, as data: a list of steps whose equations
// are lists of terms. Text, notebook and HTML are renderings of these (report/). Numbers are in the
// model's own units, as they would be on paper. Every equation can be evaluated from its own terms.

#include "core/ids.hpp"
#include "hand/paper/exact_values.hpp"
#include "model/truss/truss.hpp"
#include "statics/solve/solution.hpp"

#include <string>
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

// A sentence of the phrase table (report/text/phrases) with its parts, in data.
enum class RemarkKind {
    NothingDrawn,     // there is no joint yet
    CountDeterminate, // m + r = 2j
    CountIndeterminate,
    CountMechanism,
    CountBalanced,      // it can move, but these loads are in balance
    MomentCentreChosen, // joint (or text, the name of a point): symbols' lines pass through it
    CentreOffTruss,     // joint, at: text is the name of a point this far from the joint
    SumLeavesOne,       // the sum holds one unknown only
    SumAcross,          // symbols are parallel: across them one unknown is left
    ReactionsTogether,  // symbols: no equation of the whole holds only one of these
    ReactionsNotEnough, // symbols: more than three, so the joints must help
    TakenApart,         // joint: a hinge; the step's body is the part looked at
    PartAndWhole,       // symbols: the same two in an equation of the whole and in one of the part
    NegativeReaction,   // symbol: acts the other way
    NegativeForce,      // symbol: compression
    AssumedAway,        // unknown forces are drawn away from the joint
    AssumedGuessed,     // unknown forces are drawn in the sense that is expected
    JointChosen,        // joint: symbols are its unknowns
    BothInclined,       // symbols: neither equation holds only one of these two
    NoEasyJoint,        // every joint left has more than two unknowns
    NoEasySection,      // nor has any section an equation with one unknown
    CutChosen,          // the step's members are cut, its body is looked at
    CutForAll,          // the step's members are cut; the load stands on one part, the other is
                        // looked at
    NoWorking,          // equilibrium alone does not give the forces
    NoSectionFor,       // members: no section holds this one alone
    NotTwoParts,        // members: taken out, they don't leave two parts
    TooManyCut,         // members: cut, they leave that number of unknowns, none alone
    TryCut,             // members: a cut that gives the symbol
    SimultaneousChosen, // joints of the step's body; number of equations, symbols
    NoInclined,         // every member is horizontal or vertical
    Symmetric,          // truss, loads and reactions are mirror images about the middle
    BySymmetry,         // symbols: the same values stand on the other side
    NothingIdle,        // no member is idle by inspection
    NoLoads,            // nothing acts: everything is zero
    Closes,             // the check equations balance
    ClosesTo,           // number: the most by which they miss, force units, by carried rounding
    NotComplete,        // something was not found
};
struct Remark {
    RemarkKind kind = RemarkKind::JointChosen;
    JointId joint{};
    Symbol symbol{};
    std::vector<Symbol> symbols{};
    Vec2 at{}; // length units
    double number = 0;
    std::vector<MemberId> members{};
    std::string text{};
};

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
