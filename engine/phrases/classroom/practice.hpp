#pragma once
// What a student who practises is asked and told.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kAskReactions =
    "Find the reactions: the size of each, and which way it acts."_phrase;
inline constexpr auto kAskForces =
    "Find the force in each of these members: its size, and whether it is tension (T), "
    "compression (C) or zero (0)."_phrase;
inline constexpr auto kAskZeroMembers = "Which members carry no force?"_phrase;
inline constexpr auto kAskDeterminacy =
    "By how many is the truss statically indeterminate? Write 0 if it is determinate."_phrase;
inline constexpr auto kAskDisplacementX =
    "Find the horizontal displacement of joint {joint}, positive to the right."_phrase;
inline constexpr auto kAskDisplacementY =
    "Find the vertical displacement of joint {joint}, positive upward."_phrase;
inline constexpr auto kAskInfluence =
    "Find the ordinate at {joint} of the influence line for the force in {member}, tension "
    "positive, as a load of 1 moves over {path}."_phrase;
inline constexpr auto kAskSteps =
    "Write down each step: the body, its equation, the result."_phrase;

// What can be found from a body, with what has been found so far.
inline constexpr auto kBodyNothingLeft = "Every force at {body} is written."_phrase;
inline constexpr auto kBodyGivesAll = "{body} can be solved: {unknowns} unknown."_phrase;
inline constexpr auto kBodyGivesSome =
    "{body} gives {given}, though {unknowns} are unknown there."_phrase;
inline constexpr auto kBodyTooMany =
    "{unknowns} are unknown at {body}: too many for its equations. Choose {other} first."_phrase;
inline constexpr auto kBodyTooManyNow =
    "{unknowns} are unknown at {body}: too many for its equations, as everywhere now. A section "
    "through three members, or two joints together, goes on."_phrase;
// Of a truss that equilibrium alone does not solve: instead of where to go on.
inline constexpr auto kBodyTooManyHere =
    "{unknowns} are unknown at {body}: too many for its equations."_phrase;
inline constexpr auto kBeyondEquilibrium = "Equilibrium alone does not give all forces of this "
                                           "truss: its equations are too few by {n}."_phrase;
inline constexpr auto kBeyondEquilibriumAsked =
    "Equilibrium alone does not give all forces of this truss."_phrase;
inline constexpr auto kBeyondMechanism =
    "This truss can move, and forces alone do not hold it: supports or members are missing."_phrase;
inline constexpr auto kBeyondNothing =
    "Neither a joint nor the whole truss gives anything more now."_phrase;
// Of a part that a cut leaves: which sum gives one of its forces.
inline constexpr auto kLeavesOnlyX =
    "The sum of horizontal forces leaves only {unknown} unknown."_phrase;
inline constexpr auto kLeavesOnlyY =
    "The sum of vertical forces leaves only {unknown} unknown."_phrase;
inline constexpr auto kLeavesOnlyMoments =
    "The sum of moments about {joint} leaves only {unknown} unknown."_phrase;
inline constexpr auto kLeavesOnlyFar = "Moments about the point where the other unknown forces "
                                       "meet leave only {unknown} unknown; that "
                                       "point is no joint."_phrase;
inline constexpr auto kLeavesOnlyAcross =
    "The other unknown forces are parallel: a sum across them leaves only {unknown} unknown."_phrase;
inline constexpr auto kThePart = "the part with {joints}"_phrase;
inline constexpr auto kThePartFirst = "The part with {joints}"_phrase;
inline constexpr auto kTheWholeTruss = "the whole truss"_phrase;
inline constexpr auto kTheWholeTrussFirst = "The whole truss"_phrase;
inline constexpr auto kTheJoint = "joint {joint}"_phrase;
inline constexpr auto kTheJointFirst = "Joint {joint}"_phrase;

// Hints, from where the student stands.
inline constexpr auto kHintNothingLeft = "A value is written for every force."_phrase;
inline constexpr auto kHintNext = "Next: {step}."_phrase;

// What is said of an answer while practising: never what it should be.
inline constexpr auto kCheckRight = "Right."_phrase;
inline constexpr auto kCheckUnsupported =
    "Right, but it does not follow from your other values."_phrase;
inline constexpr auto kCheckCarried =
    "This follows from your earlier values, of which one is wrong."_phrase;
inline constexpr auto kCheckSlipAt = "This does not follow: look again at {where}."_phrase;
inline constexpr auto kCheckSlip = "This does not follow from your other values."_phrase;
inline constexpr auto kCheckNotRight = "This is not right."_phrase;
inline constexpr auto kCheckHalf = "A size and a sense are needed, and one is missing."_phrase;

// What is said of a cut while its members are picked.
inline constexpr auto kCutNothing =
    "No member is cut yet: pick those that the section goes through."_phrase;
inline constexpr auto kCutStillOne =
    "The truss still hangs together: cut more members, until it falls into two parts."_phrase;
inline constexpr auto kCutTooMany =
    "The truss falls into {parts} parts: cut fewer members, so that there are two."_phrase;
inline constexpr auto kCutIdle =
    "{member} is cut, though both its ends are in the same part: leave it whole."_phrase;
inline constexpr auto kCutParts = "The cut parts the truss in two: choose a part."_phrase;
inline constexpr auto kCutPartChosen = "The cut parts the truss in two."_phrase;

// What is said of a term while an equation is built.
inline constexpr auto kTermMissing = "It has a part in this equation."_phrase;
inline constexpr auto kTermNotInIt = "It has no part in this equation."_phrase;
inline constexpr auto kTermWrongSign = "It is the other way round."_phrase;
inline constexpr auto kTermWrongMultiplier =
    "This is not its part along the axis: look at its angle with the horizontal."_phrase;
inline constexpr auto kTermWrongArm =
    "This is not its arm: the distance from the centre to its line, at right angles."_phrase;
inline constexpr auto kEquationRight = "The equation is right. Unknown in it: {unknowns}."_phrase;
inline constexpr auto kEquationRightKnown =
    "The equation is right, and holds nothing unknown: it checks what you have."_phrase;
inline constexpr auto kForceMember = "{member}, away from the body"_phrase;
inline constexpr auto kForceReaction = "{reaction}, {arrow}"_phrase;
inline constexpr auto kForceLoad = "the load at {joint}, {size} {arrow}"_phrase;

} // namespace gusset::phrase
