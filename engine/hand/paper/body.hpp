#pragma once
// A free body and its equations of equilibrium: a joint, the whole truss, or a part cut off.
// Private to hand/. Members that cross its boundary are cut; their forces are drawn away from it.

#include "hand/paper/divisions.hpp"
#include "hand/paper/sheet.hpp"

#include <vector>

namespace gusset {

struct Acting {
    Symbol symbol;
    JointId at; // a joint of the body
    Vec2 along; // unit vector of the force on the body for a positive value
};

[[nodiscard]] std::vector<Symbol> symbolsOf(const std::vector<Acting>&);

struct Body {
    std::vector<JointId> joints;
    std::vector<Acting> unknowns; // reactions, then members
    std::vector<Acting> knowns;   // reactions, then members, without those known to be zero
    std::vector<Acting> zeros;    // known to be zero
};

[[nodiscard]] Body bodyOf(const Sheet&, std::vector<JointId> joints);
[[nodiscard]] Body wholeBody(const Sheet&);
// One side of a division: the same as bodyOf for its joints, but without going through the whole
// truss.
[[nodiscard]] Body bodyBeside(const Sheet&, const Divisions&, std::size_t division, int side);
[[nodiscard]] std::size_t unknownsAt(const Sheet&, JointId);               // that act on a joint
[[nodiscard]] bool passesThrough(const Sheet&, const Acting&, Vec2 point); // its line of action
// The joint to which an inclined member force is moved along its line before it is resolved, so
// that one of its parts has no arm about the point; none if it stays where it is.
[[nodiscard]] JointId movedTo(const Sheet&, const Acting&, Vec2 point);
// Whether it has a moment about the point.
[[nodiscard]] bool turnsAbout(const Sheet&, const Acting&, Vec2 point);

[[nodiscard]] Equation sumOf(const Sheet&, const Body&, EquationKind); // SumX or SumY
[[nodiscard]] Equation momentsAbout(const Sheet&, const Body&, Vec2 point, JointId);
[[nodiscard]] Equation sumAlong(const Sheet&, const Body&, Vec2 direction);
// The number of terms of these equations, without writing them.
[[nodiscard]] std::size_t termsOfSum(const Sheet&, const Body&, EquationKind);
[[nodiscard]] std::size_t termsOfMoments(const Sheet&, const Body&, Vec2 point);
[[nodiscard]] std::size_t termsOfSumAlong(const Sheet&, const Body&, Vec2 direction);

// For an equation whose unknowns are not yet found.
[[nodiscard]] std::vector<Symbol> unknownsOf(const Equation&);
void putValue(Equation&, const Symbol&, double value);

// Adds to a step's uses everything that an equation of the body depends on, including zero forces.
void noteUses(const Sheet&, const Body&, const Equation&, Step&);

// With guessed senses: the one unknown of an equation is drawn in the sense it will have, as a
// person sees what is needed for balance. Returns the rewritten equation.
[[nodiscard]] Equation withGuess(Sheet&, const Body&, const Equation&);

// Solves an equation with one unknown, records it and returns it. Precondition: it has one.
[[nodiscard]] Found solveFor(Sheet&, Equation&);
// Solves n equations for n unknowns together and records them in the order of `unknowns`; returns
// false and records nothing when the equations don't determine them.
[[nodiscard]] bool solveTogether(Sheet&, std::vector<Equation>&,
                                 const std::vector<Symbol>& unknowns, std::vector<Found>& found);

} // namespace gusset
