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
    "no heading names an answer: write AB or A-B for a member, A_x or A_y for a reaction, zero, "
    "degree, or Q2 for the value of question 2"_phrase;
inline constexpr auto kNoSuchColumn =
    "the exercise has no such member, reaction or value: the column is left out"_phrase;
inline constexpr auto kColumnTwice = "is there twice: the second is left out"_phrase;
inline constexpr auto kCellNotForce =
    "\"{text}\" is no force: write a number, then T, C or a unit if need be; it counts as blank"_phrase;
inline constexpr auto kCellNotWhole = "\"{text}\" is no degree of indeterminacy: write a whole "
                                      "number, such as 0; it counts as blank"_phrase;
inline constexpr auto kCellNotNumber =
    "\"{text}\" is no value: write a number; it counts as blank"_phrase;
inline constexpr auto kCellNoMember = "\"{text}\" is no member of the truss: it is left out"_phrase;
inline constexpr auto kRowOfAnother =
    "this sheet is for another exercise or variant: it is not marked"_phrase;
inline constexpr auto kOfNoExercise =
    "this sheet is for no exercise of the course: it is not marked"_phrase;
inline constexpr auto kNoCourse = "no exercise is in this folder: put models with an exercise, as "
                                  "files that end in .json, into it"_phrase;
inline constexpr auto kExerciseTwice = "the same exercise as in {file}: it is left out"_phrase;
inline constexpr auto kFolderUnread =
    "this folder can't be read: check its name and that you may open it"_phrase;
inline constexpr auto kMarksAreThere = "this file holds something already: add --resume to go on "
                                       "with it, or name another"_phrase;
inline constexpr auto kRowTwice = "the same as row {row}: it is left out"_phrase;
inline constexpr auto kCodeTwice =
    "\"{code}\" is in row {row} too, with other answers: both are marked"_phrase;
inline constexpr auto kCodeInFile =
    "\"{code}\" is in row {row} of {file} too: both are marked"_phrase;
inline constexpr auto kCodeElsewhere = "\"{code}\" is in {place} too: both are marked"_phrase;
inline constexpr auto kRowBlank = "no answers: the student is missing"_phrase;
inline constexpr auto kRowTooLong =
    "more cells than there are headings: the last are left out"_phrase;

} // namespace gusset::phrase
