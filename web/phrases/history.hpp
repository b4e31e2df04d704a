#pragma once
// The names of steps of the history that only the page takes; those of single edits are in
// engine/phrases/edits.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kStepMirrorJoint = "Mirror 1 joint"_phrase;
inline constexpr auto kStepMirrorJoints = "Mirror {n} joints"_phrase;
inline constexpr auto kStepRepeatJoint = "Repeat 1 joint"_phrase;
inline constexpr auto kStepRepeatJoints = "Repeat {n} joints"_phrase;
inline constexpr auto kStepCopyJoint = "Copy 1 joint"_phrase;
inline constexpr auto kStepCopyJoints = "Copy {n} joints"_phrase;
inline constexpr auto kStepTurnJoint = "Turn 1 joint"_phrase;
inline constexpr auto kStepTurnJoints = "Turn {n} joints"_phrase;
inline constexpr auto kStepDimension = "Dimension of {length}"_phrase;
inline constexpr auto kStepPasteRows = "Paste rows"_phrase;

inline constexpr auto kStepBegin = "Begin with a form"_phrase;
inline constexpr auto kStepNewBoard = "New board"_phrase;
inline constexpr auto kStepOpen = "Open"_phrase;
inline constexpr auto kStepOpenFile = "Open {file}"_phrase;
inline constexpr auto kStepOpenLink = "Open link"_phrase;
inline constexpr auto kStepOpenExample = "Open example"_phrase;
inline constexpr auto kStepOpenAgain = "Open again"_phrase;

} // namespace gusset::phrase
