#pragma once
// Remarks on a step of a working: why this joint, cut or equation, and what the result means.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kNothingDrawn =
    "Nothing is drawn yet. Draw a member: joints appear at its ends."_phrase;
inline constexpr auto kCountDeterminate =
    "Each joint gives two equations: as many as there are unknowns. The count alone is no proof, "
    "but this truss is also stable: it is statically determinate."_phrase;
inline constexpr auto kCountIndeterminate =
    "More unknowns than equations of equilibrium, by {degree}: "
    "the truss is statically indeterminate. The working by "
    "equilibrium alone ends here."_phrase;
inline constexpr auto kCountMechanism =
    "The truss can move without any member changing its length. "
    "It has to be made stable before its forces can be found."_phrase;
inline constexpr auto kCountBalanced =
    "The truss can move, but these loads happen to be in balance on it: "
    "the working holds for exactly these loads."_phrase;
inline constexpr auto kLoadsOfCase = "The loads are those of the case {name} alone."_phrase;
inline constexpr auto kLoadsOfCombination =
    "The loads are those of the combination {name}: {cases}."_phrase;
inline constexpr auto kLoadsOfAllCases =
    "The loads of all cases act together, each with a factor of 1: {cases}."_phrase;
inline constexpr auto kFactoredCase = "{factor} × {name}"_phrase;
inline constexpr auto kLoadInclined =
    "The load of {size} at {joint} acts at {angle} to the horizontal, {direction}: {size} · cos "
    "{angle} {across} and {size} · sin {angle} {upright}."_phrase;
inline constexpr auto kLoadsShared =
    "Loads that act between joints are shared out to the two joints of their member, as by a "
    "simple beam. The bending that they cause in the member is not part of this working."_phrase;
inline constexpr auto kMoreThanThree =
    "{reactions} are more than the three equations of the whole truss can "
    "give: parts of it must be looked at."_phrase;
inline constexpr auto kNothingActs =
    "No load acts, so every reaction and every member force is zero."_phrase;
inline constexpr auto kMomentCentre =
    "{through} pass through {joint} and drop out, which leaves {left}."_phrase;
inline constexpr auto kMomentCentreThroughOne = "{through} passes through {joint} and drops out, "
                                                "which leaves {left}."_phrase;
inline constexpr auto kMomentCentreOne =
    "Only {left} turns about {joint} without being known."_phrase;
inline constexpr auto kCentreOffTruss = "The lines of {through} meet at {centre}, {place}. "
                                        "Moments about {centre} leave {left}."_phrase;
inline constexpr auto kMovedPlumb =
    "Move {force} along its line to {joint}: there its vertical part has no arm."_phrase;
inline constexpr auto kMovedLevel =
    "Move {force} along its line to {joint}: there its horizontal part has no arm."_phrase;
inline constexpr auto kPlaceLeft = "{dx} to the left of {joint}"_phrase;
inline constexpr auto kPlaceRight = "{dx} to the right of {joint}"_phrase;
inline constexpr auto kPlaceAbove = "{dy} above {joint}"_phrase;
inline constexpr auto kPlaceBelow = "{dy} below {joint}"_phrase;
inline constexpr auto kPlaceLeftAbove = "{dx} to the left of {joint} and {dy} above it"_phrase;
inline constexpr auto kPlaceLeftBelow = "{dx} to the left of {joint} and {dy} below it"_phrase;
inline constexpr auto kPlaceRightAbove = "{dx} to the right of {joint} and {dy} above it"_phrase;
inline constexpr auto kPlaceRightBelow = "{dx} to the right of {joint} and {dy} below it"_phrase;
inline constexpr auto kSumLeavesOne = "The only unknown in this sum is {left}."_phrase;
inline constexpr auto kReactionsTogether =
    "No equation of the whole truss holds only one of {reactions}: "
    "solve them together."_phrase;
inline constexpr auto kReactionsMirror =
    "The truss, its supports and its loads are the same on both sides of the middle, and {level} "
    "is zero. So {reactions} are equal: each carries half of the load."_phrase;
inline constexpr auto kTakenApart =
    "Joint {joint} holds the parts together like a hinge: no moment passes "
    "through it. Take the truss apart there and look at {joints}."_phrase;
inline constexpr auto kPartAndWhole =
    "Moments of this part about the hinge, and of the whole truss about "
    "the far support, hold the same two unknowns, {unknowns}: "
    "solve them together."_phrase;
inline constexpr auto kActsOtherWay =
    "{symbol} is negative: it acts the other way, {direction}."_phrase;
inline constexpr auto kNoInclined =
    "Every member is horizontal or vertical: no angles are needed."_phrase;
inline constexpr auto kZeroAlreadyOne = "At {joint}, {zero} is already known to be zero."_phrase;
inline constexpr auto kZeroAlreadyMany = "At {joint}, {zeros} are already known to be zero."_phrase;
inline constexpr auto kIdleTwo =
    "At {joint} only {a} and {b} meet, not in line, and nothing else acts: "
    "both are zero."_phrase;
inline constexpr auto kIdleTwoLeft =
    "That leaves only {a} and {b}, not in line, and nothing else acts: both are zero."_phrase;
inline constexpr auto kIdleThird =
    "At {joint} only {a}, {b} and {idle} meet, and nothing else acts. {a} and {b} are in line: "
    "nothing can balance {idle} across them, so it is zero."_phrase;
inline constexpr auto kIdleThirdLeft =
    "That leaves only {a}, {b} and {idle}, and nothing else acts. {a} and {b} are in line: "
    "nothing can balance {idle} across them, so it is zero."_phrase;
inline constexpr auto kIdleBesideLoad =
    "At {joint} only {a} and {idle} meet, and all that acts from outside is in line with {a}: "
    "nothing can balance {idle} across it, so it is zero."_phrase;
inline constexpr auto kIdleBesideLoadLeft =
    "That leaves only {a} and {idle}, and all that acts from outside is in line with {a}: "
    "nothing can balance {idle} across it, so it is zero."_phrase;
inline constexpr auto kIdleLone =
    "At {joint} only {idle} is left, and nothing else acts: it is zero."_phrase;
inline constexpr auto kIdleNone = "No member can be seen to be zero before calculating."_phrase;
inline constexpr auto kSymmetric =
    "The truss, the loads at its joints and its reactions are the same on both sides of the "
    "middle. Members that mirror each other carry the same force, so one half is enough."_phrase;
inline constexpr auto kSymmetricTogether =
    "The members are the same on both sides of the middle. The loads alone and the reactions alone "
    "are not, but together, at {joints}, they are. So members that mirror each other carry the "
    "same force, and one half is enough."_phrase;
inline constexpr auto kBySymmetry = "The other side mirrors {symbols}."_phrase;
inline constexpr auto kJointOneUnknown = "One unknown: {unknown}."_phrase;
inline constexpr auto kJointTwoUnknowns = "Two unknowns: {unknowns}."_phrase;
inline constexpr auto kAssumedAway =
    "Draw unknown member forces pulling. A positive answer is then tension, "
    "a negative one compression."_phrase;
inline constexpr auto kAssumedGuessed = "Draw each unknown force in the sense that you expect. "
                                        "A negative answer says that it acts the other way."_phrase;
inline constexpr auto kDrawnPulling = "{symbol} is drawn pulling."_phrase;
inline constexpr auto kDrawnPushing = "{symbol} is drawn pushing."_phrase;
inline constexpr auto kNegativeForce = "{symbol} is negative: drawn pulling, it pushes. "
                                       "{member} is in compression."_phrase;
inline constexpr auto kBothInclined = "Both sums hold {unknowns}: solve the two together."_phrase;
inline constexpr auto kNoEasyJoint = "Every joint that is left has more than two unknowns: "
                                     "one joint at a time goes no further."_phrase;
inline constexpr auto kNoEasySection =
    "Nor has any section an equation with only one unknown."_phrase;
inline constexpr auto kCutLeft = "Cut {members} and look at the part on the left: {joints}."_phrase;
inline constexpr auto kCutRight =
    "Cut {members} and look at the part on the right: {joints}."_phrase;
inline constexpr auto kCutUpper = "Cut {members} and look at the upper part: {joints}."_phrase;
inline constexpr auto kCutLower = "Cut {members} and look at the lower part: {joints}."_phrase;
inline constexpr auto kCutPart = "Cut {members} and look at the part with {joints}."_phrase;
inline constexpr auto kNoWorking = "Equilibrium alone does not give the forces of this truss, "
                                   "so no section can."_phrase;
inline constexpr auto kNoSectionFor = "No section has an equation that holds {member} alone: "
                                      "find it by joints."_phrase;
inline constexpr auto kNotTwoParts =
    "Taking out {members} does not leave the truss in two parts."_phrase;
inline constexpr auto kTooManyCut =
    "The cut through {members} leaves {n} unknowns, and no equation of either "
    "part holds one of them alone."_phrase;
inline constexpr auto kTryCut = "A cut through {members} would give {symbol}."_phrase;
inline constexpr auto kSimultaneousOne = "Joint {joint} gives {n} equations for {unknowns}: "
                                         "solve them together."_phrase;
inline constexpr auto kSimultaneous = "Joints {joints} together give {n} equations for {unknowns}: "
                                      "eliminate these from them one after the other."_phrase;
inline constexpr auto kSumsClose = "They do: the working closes."_phrase;
inline constexpr auto kSumsMiss =
    "They miss by {number} at most: that is the rounding carried along."_phrase;
inline constexpr auto kNotComplete =
    "The working could not be brought to an end: what is not listed was "
    "not found."_phrase;
inline constexpr auto kCutForAll =
    "Cut {members}, and leave the cut where it is. While the load stands on "
    "one part, look at the other, which carries none."_phrase;

} // namespace gusset::phrase
