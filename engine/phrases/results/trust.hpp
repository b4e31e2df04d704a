#pragma once
// How far results can be trusted, what they rest on, and why there are no exact ones.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kNotAccurate =
    "The truss is so close to being unstable that its forces can't be "
    "computed to working accuracy."_phrase;
inline constexpr auto kStiffnessesDiffer =
    "The forces depend on the stiffness of every member, and these differ too much to compute "
    "them: E·A of member {member} is {times} times the median of all members. Are its E and A in "
    "the right units?"_phrase;
inline constexpr auto kStandsOut =
    "E·A of member {member} is {times} times the median of all members: are its "
    "E and A in the right units?"_phrase;
inline constexpr auto kCloseToMechanism =
    "Close to a mechanism at joint {joint}: a load of 1 there can cause a force of {times} in "
    "member {member}. A small change of shape changes the forces greatly."_phrase;
inline constexpr auto kCloseToMechanismReaction =
    "Close to a mechanism at joint {joint}: a load of 1 there can cause a reaction of {times}. "
    "A small change of shape changes the forces greatly."_phrase;
inline constexpr auto kBarelyHeld =
    "The coordinates do hold joint {joint}, but so weakly that a load of 1 would "
    "cause forces of about {times}: it counts as free to move."_phrase;
inline constexpr auto kFiguresLeft =
    "Rounding leaves {n} figures of the largest force; digits beyond these are not shown in any force."_phrase;
inline constexpr auto kOrdinateFiguresLeft =
    "Rounding leaves {n} figures of the largest ordinate; digits beyond these are not shown in any ordinate."_phrase;
inline constexpr auto kNoOrdinateFigures =
    "Rounding may put the ordinates off by more than their own size: "
    "what is shown says nothing of this line."_phrase;
inline constexpr auto kMovementFiguresLeft =
    "Rounding leaves {n} figures of the largest displacement and fewer of small ones; digits beyond these are not shown in any displacement."_phrase;
inline constexpr auto kForceBelowBound =
    "The force in member {member} is smaller than rounding may put it off by, {bound}: it is "
    "written 0, and whether it is tension or compression is open."_phrase;
inline constexpr auto kForcesBelowBound =
    "The forces in {n} members, {member} among them, are smaller than rounding may put them off "
    "by, {bound}: they are written 0, and whether they are tension or compression is open."_phrase;
inline constexpr auto kReactionBelowBound =
    "Part of the reaction at {joint} is smaller than rounding may put it off by, {bound}: it is "
    "written 0."_phrase;
inline constexpr auto kReactionsBelowBound =
    "Parts of {n} reactions, that at {joint} among them, are smaller than rounding may put them "
    "off by, {bound}: they are written 0."_phrase;
inline constexpr auto kOneNegligible =
    "One force or reaction is smaller than a billionth of the largest "
    "load, reaction or force: it is written 0."_phrase;
inline constexpr auto kSomeNegligible =
    "{n} forces or reactions are smaller than a billionth of the largest "
    "load, reaction or force: they are written 0."_phrase;
inline constexpr auto kFiguresInWorking =
    "Rounding may put any force off by {bound}: figures of this working that are smaller than that say nothing."_phrase;
inline constexpr auto kResidual =
    "Equilibrium at every joint is met to {residual} of the largest force; "
    "rounding puts no force off by more than about {error} of it."_phrase;
inline constexpr auto kResidualNone =
    "Equilibrium at every joint is met in every figure computed; "
    "rounding puts no force off by more than about {error} of the largest."_phrase;
inline constexpr auto kResidualOfNothing =
    "No force acts at any joint: there is nothing to balance."_phrase;
inline constexpr auto kAssumedEqual =
    "E·A is taken to be the same for all members, as the model gives none: "
    "the forces are right only if that is so."_phrase;
inline constexpr auto kInexactCoordinates =
    "The coordinates of joint {joint} are not decimals of at most fifteen digits, which exact answers need."_phrase;
inline constexpr auto kInexactSlope =
    "The roller at {joint} has no slope of whole numbers: exact answers need one, such as 3 : 4."_phrase;
// {n}: the number of the load, in the order of the model.
inline constexpr auto kInexactComponents =
    "Load {n} has components that are not decimals: exact answers need decimals, or slopes such as 3 : 4."_phrase;
inline constexpr auto kInexactTooLarge =
    "Exact answers are given up to {n} members: above, the answer is in "
    "floating point."_phrase;
inline constexpr auto kInexactRedundant =
    "Exact forces are given where equilibrium alone determines them."_phrase;
inline constexpr auto kInexactMoves =
    "The truss is a mechanism that these loads set in motion."_phrase;

} // namespace gusset::phrase
