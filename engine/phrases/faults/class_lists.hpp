#pragma once
// What is wrong with a list of students' answers. Each is said with its row, and the rest is read.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kPlaceRow = "row {row}"_phrase;
inline constexpr auto kPlaceCell = "row {row}, column \"{column}\""_phrase;
inline constexpr auto kPlaceColumn = "column \"{column}\""_phrase;
inline constexpr auto kListEmpty =
    "holds no answers: it needs a row of headings, and a row for each student"_phrase;
inline constexpr auto kNoAnswerColumns =
    "no heading names a member or a reaction of the truss: write AB or A-B, A_x or A_y"_phrase;
inline constexpr auto kNoSuchColumn =
    "the truss has no such member or reaction: the column is left out"_phrase;
inline constexpr auto kColumnTwice = "is there twice: the second is left out"_phrase;
inline constexpr auto kCellNotForce =
    "\"{text}\" is no force: write a number, then T, C or a unit if need be; it counts as blank"_phrase;
inline constexpr auto kRowOfAnother =
    "this sheet is for another exercise or variant: it is not marked"_phrase;
inline constexpr auto kRowTwice = "the same as row {row}: it is left out"_phrase;
inline constexpr auto kCodeTwice =
    "\"{code}\" is in row {row} too, with other answers: both are marked"_phrase;
inline constexpr auto kRowBlank = "no answers: the student is missing"_phrase;
inline constexpr auto kRowTooLong =
    "more cells than there are headings: the last are left out"_phrase;

} // namespace gusset::phrase
