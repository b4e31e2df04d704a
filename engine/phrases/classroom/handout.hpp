#pragma once
// An exercise on paper.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kHandoutVariant = "Variant {number}"_phrase;
inline constexpr auto kHandoutCode = "Code:"_phrase;
inline constexpr auto kHandoutKey = "For the teacher: not for students."_phrase;
inline constexpr auto kQuestionNumber = "Question {number}"_phrase;
inline constexpr auto kQuestionForMarks = "Question {number} ({marks} marks)"_phrase;
inline constexpr auto kQuestionForOneMark = "Question {number} (1 mark)"_phrase;
inline constexpr auto kBlankAnswer = "Answer:"_phrase;
inline constexpr auto kRoomForWorking = "Working"_phrase;
inline constexpr auto kCompleteBodies =
    "Complete the free bodies: draw every force that acts on them, then write their equations."_phrase;
inline constexpr auto kJointToComplete =
    "Joint {joint} with its members, for the forces to be drawn on it"_phrase;
inline constexpr auto kHandoutWorking = "How the forces are found"_phrase;
inline constexpr auto kNoFigure = "This truss has too many joints to be drawn here."_phrase;

} // namespace gusset::phrase
