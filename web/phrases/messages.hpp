#pragma once
// Messages about what was typed, pasted or opened, and about the pen. {fault} is a fault of
// a model, a link or a typed number (engine/phrases).

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kTheLinkHasFault = "The link {fault}"_phrase;
inline constexpr auto kWhyNoLink = "The link {fault}."_phrase;
inline constexpr auto kNoGroundLength = "The length must be between 1 mm and 10 km."_phrase;
inline constexpr auto kPastedRowFault = "Row {n} of what was pasted: {fault}"_phrase;
inline constexpr auto kMoreRowsThanShown =
    "More rows were pasted than are shown here: show all rows first, or paste into the empty row "
    "at the end."_phrase;
inline constexpr auto kNoJointOfThatName = "There is no joint “{joint}”."_phrase;
inline constexpr auto kNotTwoJoints =
    "“{text}” does not name two joints: write their labels as A–B."_phrase;
inline constexpr auto kShapeIsWritten = "A {shape} is written {name} {dimensions}."_phrase;
inline constexpr auto kWriteSection =
    "Write A and its value, r and its value, or a shape and its dimensions: A 1200, r 25. Shapes: "
    "{shapes}."_phrase;
inline constexpr auto kIsNoSection =
    "“{text}” is not a section: write A 1200, r 25, or a shape and its dimensions. Shapes: {shapes}."_phrase;
inline constexpr auto kWriteSettlement =
    "Write how far the pin moves to the right and up: 0, −5."_phrase;
inline constexpr auto kPinOrRoller = "Write pin or roller."_phrase;
inline constexpr auto kPenDraws =
    "A pen draws, so fingers only move the board now. View, “Finger draws” changes that."_phrase;

} // namespace gusset::phrase
