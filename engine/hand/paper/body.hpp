#pragma once
// A free body and its equations of equilibrium: a joint, the whole truss, or a part cut off.
// Private to hand/. Members that reach out of the body are cut; their forces are drawn away from
// it.

#include "hand/paper/divisions.hpp"
#include "hand/paper/sheet.hpp"

#include <vector>

namespace gusset {

struct Acting {
    Symbol symbol;
    JointId at; // a joint of the body
    Vec2 along; // unit vector in which a positive value acts on the body
};

[[nodiscard]] std::vector<Symbol> symbolsOf(const std::vector<Acting>&);

struct Body {
    std::vector<JointId> joints;
    std::vector<Acting> unknowns; // reactions, then members
    std::vector<Acting> knowns;   // likewise, without what is known to be zero
    std::vector<Acting> zeros;    // known to be zero
};

[[nodiscard]] Body bodyOf(const Sheet&, std::vector<JointId> joints);
[[nodiscard]] Body wholeBody(const Sheet&);
// One side of a division: what bodyOf gives for its joints, without a look at the whole truss.
[[nodiscard]] Body bodyBeside(const Sheet&, const Divisions&, std::size_t division, int side);
[[nodiscard]] std::size_t unknownsAt(const Sheet&, JointId);               // that act on a joint
[[nodiscard]] bool passesThrough(const Sheet&, const Acting&, Vec2 point); // its line of action
// Whether it stands in the moments about the point.
[[nodiscard]] bool turnsAbout(const Sheet&, const Acting&, Vec2 point);

[[nodiscard]] Equation sumOf(const Sheet&, const Body&, EquationKind); // SumX or SumY
[[nodiscard]] Equation momentsAbout(const Sheet&, const Body&, Vec2 point, JointId);
[[nodiscard]] Equation sumAlong(const Sheet&, const Body&, Vec2 direction);
// How many terms these equations have, without writing them.
[[nodiscard]] std::size_t termsOfSum(const Sheet&, const Body&, EquationKind);
[[nodiscard]] std::size_t termsOfMoments(const Sheet&, const Body&, Vec2 point);
[[nodiscard]] std::size_t termsOfSumAlong(const Sheet&, const Body&, Vec2 direction);

// Of an equation whose unknowns are still open.
[[nodiscard]] std::vector<Symbol> unknownsOf(const Equation&);
[[nodiscard]] double coefficientOf(const Equation&, const Symbol&);
[[nodiscard]] double constantOf(const Equation&); // all terms without an unknown
void putValue(Equation&, const Symbol&, double value);

// Adds to a step's uses what an equation of the body rests on, also by being zero.
void noteUses(const Sheet&, const Body&, const Equation&, Step&);

// With guessed senses: the one unknown of an equation is drawn as it will come out, for a person
// sees what is needed to balance. Gives the equation anew.
[[nodiscard]] Equation withGuess(Sheet&, const Body&, const Equation&);

// Solves an equation with one unknown, records and returns it. Precondition: it has one.
[[nodiscard]] Found solveFor(Sheet&, Equation&);
// Solves n equations for n unknowns together (records in the order of `unknowns`); false, with
// nothing recorded, when they don't settle them.
[[nodiscard]] bool solveTogether(Sheet&, std::vector<Equation>&,
                                 const std::vector<Symbol>& unknowns, std::vector<Found>& found);

} // namespace gusset
