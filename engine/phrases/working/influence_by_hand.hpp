#pragma once
// Influence lines by hand.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kTitleInfluence = "Influence line of {effect}"_phrase;
inline constexpr auto kLoadMoves =
    "Let a unit load, acting down, move along {joints}. What {effect} is when "
    "the load stands at a joint is the ordinate there. Between two joints the "
    "line is straight, for stringers hand the load on to both."_phrase;
inline constexpr auto kReactionPositive = "Positive ordinates act {direction}."_phrase;
inline constexpr auto kJointForAll =
    "Wherever the load stands, joint {joint} has an equation in which "
    "{effect} is the only unknown."_phrase;
inline constexpr auto kTitleLoadAt = "Load at {joint}"_phrase;
inline constexpr auto kTitleLoadAnywhere = "Load at {x}"_phrase;
inline constexpr auto kLoadAtX =
    "Let the load stand anywhere on its path, at the distance {x} from {joint}, measured "
    "{direction}."_phrase;
inline constexpr auto kHoldsForX = "This holds from {joint}, {from}, to {end}, {to}."_phrase;
inline constexpr auto kLookLeft = "Look at the part on the left: {joints}."_phrase;
inline constexpr auto kLookRight = "Look at the part on the right: {joints}."_phrase;
inline constexpr auto kLookUpper = "Look at the upper part: {joints}."_phrase;
inline constexpr auto kLookLower = "Look at the lower part: {joints}."_phrase;
inline constexpr auto kLookPart = "Look at the part with {joints}."_phrase;
inline constexpr auto kOrdinatesCaption = "Ordinates of {effect}"_phrase;
inline constexpr auto kTitleShape = "Shape"_phrase;
inline constexpr auto kShapeZero = "The line is zero all along: this load never reaches it."_phrase;
inline constexpr auto kShapeStraight = "The line is straight from end to end."_phrase;
inline constexpr auto kShapeCorner =
    "The line has a corner at {joints} and is straight on either side."_phrase;
inline constexpr auto kShapeCorners =
    "The line has corners at {joints} and is straight in between."_phrase;
inline constexpr auto kReasonReaction =
    "Wherever the load stands, the same equation gives {effect}. Only the "
    "lever arm of the load changes in it, and that grows evenly."_phrase;
inline constexpr auto kReasonJoint =
    "Only what acts on {joint} enters its equation: the load when it stands "
    "there or in a panel beside it, and the reaction, if there is one."_phrase;
inline constexpr auto kReasonSection =
    "As long as the load stays on one part, the same equation holds, and "
    "the reactions in it change evenly as the load moves. Across the cut "
    "the stringers keep the line straight."_phrase;
inline constexpr auto kReasonSectionCorners =
    "As long as the load stays on one part, the same equation holds. The reactions in it change "
    "evenly as the load moves, except at {joints}: there they have corners of their own, and the "
    "line has them too. Across the cut the stringers keep the line straight."_phrase;
inline constexpr auto kVirtualCut =
    "The shape comes without any numbers, too: cut {member} and let its ends "
    "part by 1. How far each joint of the path then sinks is its ordinate, "
    "for the load does as much work as the force."_phrase;
inline constexpr auto kVirtualSupport =
    "The shape comes without any numbers, too: move the support at "
    "{joint} by 1 {direction}, against {effect}. How far each joint of "
    "the path then sinks is its ordinate, for the load does as much work "
    "as the reaction."_phrase;
inline constexpr auto kInfluenceNeedsEquilibrium =
    "Equilibrium alone does not give the forces of this truss, "
    "so no equation gives the ordinates by hand."_phrase;
inline constexpr auto kInfluenceOfDisplacement =
    "A displacement has no equation of equilibrium. Put a unit "
    "load at {joint} instead: the shape into which the path "
    "then bends is the influence line."_phrase;
inline constexpr auto kInfluenceNoSupport =
    "No support holds {joint} in this direction, so there is no "
    "reaction to draw a line of."_phrase;
inline constexpr auto kInfluenceManySupports =
    "{joint} is held in this direction by more than one support, "
    "or by one at an angle: no single equation gives the sum."_phrase;
inline constexpr auto kInfluenceNotFound = "No equation was found that gives the ordinates."_phrase;

} // namespace gusset::phrase
