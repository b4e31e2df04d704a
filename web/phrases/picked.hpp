#pragma once
// The selection and what can be done with it: the menu of a place, the strip for one thing, and the
// strip for several.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kTheJoint = "Joint {joint}"_phrase;
inline constexpr auto kThatMember = "Member {member}"_phrase;
inline constexpr auto kPinAt = "Pin at {joint}"_phrase;
inline constexpr auto kRollerAt = "Roller at {joint}"_phrase;
inline constexpr auto kSupportAt = "Support at {joint}"_phrase;
inline constexpr auto kThatLoadAt = "Load at {joint}"_phrase;
inline constexpr auto kThatLoad = "Load"_phrase;
inline constexpr auto kHere = "Here"_phrase;
inline constexpr auto kSectionOf = "Section of member {member}"_phrase;

inline constexpr auto kWhyForce = "Why this force?"_phrase;
inline constexpr auto kWhyReaction = "Why this reaction?"_phrase;
inline constexpr auto kWhy = "Why?"_phrase;
inline constexpr auto kRemoveThat = "Remove {what}"_phrase;

inline constexpr auto kDrawFromIt = "Draw a member from it"_phrase;
inline constexpr auto kDrawFromHere = "Draw a member from here"_phrase;
inline constexpr auto kPinThere = "Pin"_phrase;
inline constexpr auto kRollerThere = "Roller"_phrase;
inline constexpr auto kTakeSupport = "Take the support away"_phrase;
inline constexpr auto kLoadIt = "Load…"_phrase;
inline constexpr auto kRemoveJoint = "Remove the joint"_phrase;
inline constexpr auto kSection = "Section…"_phrase;
inline constexpr auto kJointInMiddle = "Joint in the middle"_phrase;
inline constexpr auto kLoadInMiddle = "Load in the middle…"_phrase;
inline constexpr auto kRemoveMember = "Remove the member"_phrase;
inline constexpr auto kRollOnFloor = "Roll on a floor"_phrase;
inline constexpr auto kRollOnWall = "Roll on a wall"_phrase;
inline constexpr auto kTypeValue = "Type its value…"_phrase;
inline constexpr auto kTurnRound = "Turn it round"_phrase;
inline constexpr auto kRemoveLoad = "Remove the load"_phrase;
inline constexpr auto kJointHere = "Joint here"_phrase;
inline constexpr auto kSelectSeveral = "Select several"_phrase;
inline constexpr auto kCopyToHere = "Copy what is picked to here"_phrase;

inline constexpr auto kDrawAround = "Draw around what you want, or tap it"_phrase;
inline constexpr auto kRemoveAll = "Remove all that is picked"_phrase;
inline constexpr auto kDone = "Done"_phrase;
inline constexpr auto kMove = "Move…"_phrase;
inline constexpr auto kCopy = "Copy…"_phrase;
inline constexpr auto kMirror = "Mirror…"_phrase;
inline constexpr auto kTurn = "Turn…"_phrase;
inline constexpr auto kRepeat = "Repeat…"_phrase;
inline constexpr auto kWarm = "Temperature…"_phrase;
inline constexpr auto kToTheRight = "To the right"_phrase;
inline constexpr auto kToTheLeft = "To the left"_phrase;
inline constexpr auto kUpwards = "Upwards"_phrase;
inline constexpr auto kDownwards = "Downwards"_phrase;
inline constexpr auto kSectionsAndMaterials = "Sections and materials…"_phrase;

inline constexpr auto kMoveBy = "Move by"_phrase;
inline constexpr auto kCopyBy = "Copy, off by"_phrase;
inline constexpr auto kTurnBy = "Turn by"_phrase;
inline constexpr auto kRepeatBy = "Repeat"_phrase;
inline constexpr auto kWarmBy = "Temperature change, K"_phrase;
inline constexpr auto kAsStep = "as 2, 0.5 or 3 @ 30°"_phrase;
inline constexpr auto kAsTurn = "as 90°, anticlockwise"_phrase;
inline constexpr auto kAsRepeat = "as 3 × 2.5, or 3 × 2.5, 1"_phrase;
inline constexpr auto kAsWarm = "as 30"_phrase;
inline constexpr auto kCopiesWhole =
    "The number of copies is a whole one from 1 to 100, as in 3 × 2.5."_phrase;
inline constexpr auto kCopiesStep = "Copies need a step that is not zero, as in 3 × 2.5."_phrase;
inline constexpr auto kCopyStep = "A copy needs a step that is not zero, as 2, 0."_phrase;
inline constexpr auto kNothingToTurn = "Nothing is selected to turn."_phrase;

inline constexpr auto kDimensionPositive =
    "A dimension is longer than nothing: type a positive length, as 3."_phrase;
inline constexpr auto kJointMovedUp = "Joint {joint} from there upwards moved by {length}."_phrase;
inline constexpr auto kJointMovedRight =
    "Joint {joint} from there to the right moved by {length}."_phrase;
inline constexpr auto kJointsMovedUp = "{n} joints from there upwards moved by {length}."_phrase;
inline constexpr auto kJointsMovedRight =
    "{n} joints from there to the right moved by {length}."_phrase;

} // namespace gusset::phrase
