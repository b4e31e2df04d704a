#pragma once
// The force method.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kTitleReleased = "The released truss"_phrase;
inline constexpr auto kTitleReleasedForces = "Forces of the released truss"_phrase;
inline constexpr auto kTitleDisplacements = "Displacements of the released truss"_phrase;
inline constexpr auto kTitleFits = "Fitting it together"_phrase;
inline constexpr auto kTitleSuperposition = "Superposition"_phrase;
inline constexpr auto kOneTooMany =
    "There is one more unknown than there are equations of equilibrium. One force must "
    "come from how the truss deforms: the redundant."_phrase;
inline constexpr auto kTwoTooMany =
    "There are two more unknowns than there are equations of equilibrium. Two forces "
    "must come from how the truss deforms: the redundants."_phrase;
inline constexpr auto kReleaseRoller =
    "The truss would stand without the roller at {joint}. Take it away, "
    "and put the redundant {x} = {reaction} in its place."_phrase;
inline constexpr auto kReleasePin =
    "A roller would do in place of the pin at {joint}. Let it slide, and put "
    "the redundant {x} = {reaction} there."_phrase;
inline constexpr auto kReleaseCrossing =
    "{member} and {other} cross, and one of them would do. Cut "
    "{member}, and call its force the redundant {x}."_phrase;
inline constexpr auto kReleaseMember =
    "The truss would stand without {member}. Cut it, and call its force "
    "the redundant {x}."_phrase;
inline constexpr auto kReleasedByJoints =
    "What is left is statically determinate: one joint after the other "
    "gives its forces."_phrase;
inline constexpr auto kReleasedBySections =
    "What is left is statically determinate: joints and sections "
    "give its forces."_phrase;
inline constexpr auto kReleasedTogether =
    "What is left is statically determinate, but some of its joints "
    "have to be solved together."_phrase;
inline constexpr auto kGivenForces =
    "{n0} are the forces of the released truss under the given loads."_phrase;
inline constexpr auto kGivenNothing =
    "No load acts, so the forces {n0} of the released truss are zero."_phrase;
inline constexpr auto kUnitCut =
    "{n} are its forces when only {x} = 1 acts, pulling at both ends of the cut "
    "in {member}."_phrase;
inline constexpr auto kUnitReaction =
    "{n} are its forces when only {x} = 1 acts, {direction} at {joint}."_phrase;
inline constexpr auto kFoundAsUsual =
    "They are found as in any statically determinate truss."_phrase;
inline constexpr auto kHowFound = "How the forces {forces} are found"_phrase;
inline constexpr auto kReleasedForcesCaption = "Member forces of the released truss"_phrase;
inline constexpr auto kEqualStiffness =
    "EA is the same for all members and cancels in the end: the sums are "
    "written EA times as large."_phrase;
inline constexpr auto kAssumedStiffness =
    "EA is not given. It is taken to be the same for all members; then it cancels in the end, "
    "and the sums are written EA times as large."_phrase;
inline constexpr auto kIndicesOne =
    "The first index of {d} says where it is measured, the second what causes "
    "it: 0 what is given, 1 the redundant {x} = 1 alone."_phrase;
inline constexpr auto kIndicesTwo =
    "The first index of {d} says where it is measured, the second what causes "
    "it: 0 what is given, 1 the redundant {x} = 1 alone, 2 the redundant "
    "{y} = 1 alone."_phrase;
inline constexpr auto kPlaceCut = "At {i}: how far the ends at the cut in {member} overlap."_phrase;
inline constexpr auto kPlaceReaction = "At {i}: how far {joint} moves {direction}."_phrase;
inline constexpr auto kSumsCaption = "What each member adds to the displacements"_phrase;
inline constexpr auto kStrainsCaption = "What temperature changes and lack of fit add"_phrase;
inline constexpr auto kEndsMeet =
    "In the whole truss {member} is not cut, and nothing overlaps there:"_phrase;
inline constexpr auto kHoldsStill =
    "In the whole truss the support holds {joint}, which does not move "
    "{direction}:"_phrase;
inline constexpr auto kGivesWay =
    "In the whole truss {joint} moves with its support, {size} {direction}:"_phrase;
inline constexpr auto kSolveBoth = "Two equations for two redundants: solve them together."_phrase;
inline constexpr auto kEffectsAdd =
    "What is given and the redundants act together, so their forces "
    "add up:"_phrase;
inline constexpr auto kStiffnessAgrees =
    "Check: the same forces come out when the movements of all joints "
    "are solved for instead."_phrase;
inline constexpr auto kStiffnessDiffers =
    "Check: solving for the movements of all joints instead gives "
    "forces that differ by up to {number}."_phrase;
inline constexpr auto kNoRedundant =
    "The truss is statically determinate: there is no redundant, and "
    "equilibrium alone gives its forces."_phrase;
inline constexpr auto kTooManyRedundants =
    "The truss has {degree} redundants. With more than two the equations are no longer written "
    "down by hand: let the table of results give the forces, or take something away first."_phrase;
inline constexpr auto kHeldTwice =
    "Supports hold {joint} twice in the same direction. How they share the "
    "reaction does not depend on any member: take one of them away first."_phrase;
inline constexpr auto kNoRelease =
    "No member or reaction could be found whose release leaves a truss that "
    "can be worked out by hand."_phrase;

} // namespace gusset::phrase
