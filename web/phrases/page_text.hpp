#pragma once
// The page's HTML beside the board, for those who can't see the drawing.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kTheModel = "The model"_phrase;
inline constexpr auto kWorkingHeading = "The working"_phrase;
inline constexpr auto kPressToType = "A value that is pressed can be typed over."_phrase;
inline constexpr auto kTitleIs = "Title: {title}"_phrase;
inline constexpr auto kNameInUnit = "{name} ({unit})"_phrase;
inline constexpr auto kAdd = "Add"_phrase;
inline constexpr auto kMoreRows =
    "{n} more rows are too many for this page: the notebook lists them, and the file holds "
    "them."_phrase;

// Parts that are made when they are asked for, and what they ask.
inline constexpr auto kCasesHeading = "Combinations and moving loads"_phrase;
inline constexpr auto kShowPart = "Show: {part}"_phrase;
inline constexpr auto kHidePart = "Hide: {part}"_phrase;
inline constexpr auto kExactForces = "Exact member forces, tension positive"_phrase;
inline constexpr auto kClassHeading = "Class settings"_phrase;
inline constexpr auto kWhatAbout = "About"_phrase;
inline constexpr auto kSafetyBy = "Safety by"_phrase;
inline constexpr auto kEffectCounts = "Positive"_phrase;
inline constexpr auto kWhichWorking = "Working of"_phrase;
inline constexpr auto kForceFoundBy = "Force found by"_phrase;
inline constexpr auto kAlongAxis = "Direction"_phrase;
inline constexpr auto kHowManyFigures = "Decimals, or significant figures"_phrase;
inline constexpr auto kSectionThrough = "Section through the members: {names}"_phrase;
inline constexpr auto kMembersCut = "members that a section cuts"_phrase;
inline constexpr auto kPathThrough = "Another path, through the joints: {names}"_phrase;
inline constexpr auto kJointsOfPath = "joints of the path"_phrase;
inline constexpr auto kNoMemberThere = "No member joins {a} and {b}."_phrase;
inline constexpr auto kFactorsOfChecks = "Factors and limits"_phrase;
inline constexpr auto kAxlesOf = "Axles of {load}"_phrase;
inline constexpr auto kAxleOfLoad = "axle {n} of {load}"_phrase;
inline constexpr auto kValueHeading = "value"_phrase;
inline constexpr auto kCopyHeading = "copy"_phrase;
inline constexpr auto kCopyThis = "Copy"_phrase;
inline constexpr auto kCopyThat = "Copy {what}"_phrase;
inline constexpr auto kRemoveHeading = "remove"_phrase;

// What a screen reader says of a button: its value, and of what.
inline constexpr auto kValueOf = "{value}: {what}"_phrase;
inline constexpr auto kAddThat = "Add: {what}"_phrase;
inline constexpr auto kEmptyCell = "empty"_phrase;

} // namespace gusset::phrase
