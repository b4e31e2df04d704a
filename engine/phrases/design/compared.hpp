#pragma once
// In what two trusses differ. The first is the one that is open, the second the other.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kSameTruss =
    "The two are the same but for what is not compared: titles and the order of things."_phrase;
inline constexpr auto kOtherUnits =
    "The second is in other units; its figures are in those of the first."_phrase;

inline constexpr auto kJointCalled =
    "Joint {first} of the first is called {second} in the second."_phrase;
inline constexpr auto kJointMoved =
    "Joint {joint}: at ({x}, {y}) in the first, at ({otherX}, {otherY}) in the second."_phrase;
inline constexpr auto kJointsOfFirst = "Joints of the first alone: {names}."_phrase;
inline constexpr auto kJointsOfSecond = "Joints of the second alone: {names}."_phrase;
inline constexpr auto kMembersOfFirst = "Members of the first alone: {names}."_phrase;
inline constexpr auto kMembersOfSecond = "Members of the second alone: {names}."_phrase;
inline constexpr auto kSectionsOther =
    "{from} in the first, {to} in the second: members {names}."_phrase;
inline constexpr auto kNoSection = "no section"_phrase;
inline constexpr auto kSectionChanged =
    "Section {section} has other sizes or another material in the second."_phrase;
inline constexpr auto kMaterialChanged =
    "Material {material} has other values in the second."_phrase;
inline constexpr auto kMembersMadeOther =
    "Another temperature, lack of fit or K in the second: members {names}."_phrase;
inline constexpr auto kSupportsOther = "Other supports in the second: at {names}."_phrase;
inline constexpr auto kLoadOther =
    "Load on {joint}, case {case}: to the right {right} and upwards {up} in the first, {otherRight} and {otherUp} in the second."_phrase;
inline constexpr auto kLoadsOther = "Other loads on joints, case {case}: at {names}."_phrase;
inline constexpr auto kSpreadOther =
    "Other loads along chords or between joints, case {case}."_phrase;
inline constexpr auto kWeightOfFirst = "The own weight counts in the first alone."_phrase;
inline constexpr auto kWeightOfSecond = "The own weight counts in the second alone."_phrase;
inline constexpr auto kCombinationsOther = "The combinations differ."_phrase;
inline constexpr auto kMovingOther = "The moving loads differ."_phrase;
inline constexpr auto kChecksOther = "Members are checked otherwise."_phrase;
inline constexpr auto kAndMore = "{names} and {n} more"_phrase;

// What is compared in figures.
inline constexpr auto kRowWidth = "Width"_phrase;
inline constexpr auto kRowHeight = "Height"_phrase;
inline constexpr auto kRowJoints = "Joints"_phrase;
inline constexpr auto kRowMembers = "Members"_phrase;
inline constexpr auto kRowLength = "Length of all members"_phrase;
inline constexpr auto kRowTension = "Greatest tension"_phrase;
inline constexpr auto kRowCompression = "Greatest compression"_phrase;
inline constexpr auto kRowMass = "Mass of the members"_phrase;
inline constexpr auto kRowUse = "Greatest use"_phrase;
inline constexpr auto kRowMovement = "Farthest a joint moves up or down"_phrase;
inline constexpr auto kInMember = "{value}, {member}"_phrase;
inline constexpr auto kFirstHasNoForces = "The first has no forces: {why}"_phrase;
inline constexpr auto kSecondHasNoForces = "The second has no forces: {why}"_phrase;
inline constexpr auto kNotAllWeighed =
    "The mass is left out where not every member has a section and a material with a density."_phrase;
inline constexpr auto kNotAllChecked =
    "The use is left out where a member lacks what its check needs."_phrase;

} // namespace gusset::phrase
