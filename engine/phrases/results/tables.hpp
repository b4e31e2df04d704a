#pragma once
// Tables of results, their headings and the text beside them.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kMemberForcesCaption = "Member forces in {unit}, tension positive"_phrase;
inline constexpr auto kMemberForcesSigned = "Member forces, tension positive"_phrase;
inline constexpr auto kCaptionUnder = "{caption}, under {loads}"_phrase;
inline constexpr auto kMemberForces = "Member forces"_phrase;
inline constexpr auto kReactionsCaption =
    "Reactions on the truss in {unit}, positive to the right and up"_phrase;
inline constexpr auto kReactionsCaptionPlain =
    "Reactions on the truss, positive to the right and up"_phrase;
inline constexpr auto kColumnMember = "Member"_phrase;
inline constexpr auto kColumnForce = "Force"_phrase;
inline constexpr auto kColumnSense = "Sense"_phrase;
inline constexpr auto kColumnJoint = "Joint"_phrase;
inline constexpr auto kWordTension = "tension"_phrase;
inline constexpr auto kWordCompression = "compression"_phrase;
inline constexpr auto kWordZero = "zero"_phrase;
inline constexpr auto kNotesHeading = "Notes"_phrase;
inline constexpr auto kMovementCaption =
    "Displacements of the joints in {unit}, positive to the right and up"_phrase;
inline constexpr auto kMovementCaptionPlain =
    "Displacements of the joints, positive to the right and up"_phrase;
inline constexpr auto kStretchCaption =
    "Members: change of length, positive longer, and stress"_phrase;
inline constexpr auto kTotal = "Total"_phrase;
inline constexpr auto kColumnStretch = "Elongation"_phrase;
inline constexpr auto kColumnStress = "Stress"_phrase;
inline constexpr auto kLargestDisplacement =
    "Largest displacement: {value} at joint {joint}."_phrase;
inline constexpr auto kStrainEnergy = "Strain energy: {value}."_phrase;
inline constexpr auto kNoDisplacements =
    "For displacements every member needs a section with its area and "
    "a material with its E."_phrase;
inline constexpr auto kDisplacementsLost =
    "Rounding leaves fewer than three figures of the displacements, so none are given: the truss "
    "is too close to being unstable, or its stiffnesses differ too much."_phrase;
inline constexpr auto kDrawnEnlarged = "Displacements drawn {times}"_phrase;
inline constexpr auto kPickForce =
    "Tap a member or a support on the board: the shortest way to its force is shown here. "
    "With two or more members picked, a section is taken through them."_phrase;
inline constexpr auto kPickJoint =
    "Tap a joint on the board: its displacement is worked out here."_phrase;
inline constexpr auto kNothingMoves = "No joint moves under these loads."_phrase;
inline constexpr auto kReactions = "Reactions"_phrase;
inline constexpr auto kCellBy = "by"_phrase;
inline constexpr auto kOrdinates = "Ordinates"_phrase;
inline constexpr auto kLetterTension = "T"_phrase;
inline constexpr auto kLetterCompression = "C"_phrase;
inline constexpr auto kLetterZero = "0"_phrase;
inline constexpr auto kLettersExplained =
    "T: tension, positive: the member is pulled. C: compression, negative: it is pushed."_phrase;
inline constexpr auto kLongFraction = "long fraction"_phrase;
inline constexpr auto kHeadDisplacements = "Displacements"_phrase;
inline constexpr auto kHeadMembers = "Members"_phrase;
inline constexpr auto kCellJoint = "joint"_phrase;
inline constexpr auto kCellMember = "member"_phrase;
inline constexpr auto kCellForce = "force"_phrase;
inline constexpr auto kCellLetter = "T or C"_phrase;
inline constexpr auto kCellExact = "exact"_phrase;
inline constexpr auto kCellStretch = "elongation"_phrase;
inline constexpr auto kCellStress = "stress"_phrase;
inline constexpr auto kFactTension = "{value} tension"_phrase;
inline constexpr auto kFactCompression = "{value} compression"_phrase;
inline constexpr auto kFactNoForce = "no force"_phrase;
inline constexpr auto kNoPath =
    "No chain of members leads across the truss: draw one, or pick the joints of "
    "a path."_phrase;
inline constexpr auto kNoSupportForLine =
    "The truss has no support yet: put one where it rests."_phrase;

} // namespace gusset::phrase
