#pragma once
// What is wrong with the question that a model asks, or with answers to it. Words in quotes are
// keys and words of the file.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kPlaceExercise = "the exercise"_phrase;
inline constexpr auto kPlaceQuestion = "question {n}"_phrase; // from 1, as people count
inline constexpr auto kPlaceAnswers = "the answers"_phrase;
inline constexpr auto kNoExercise =
    "the model asks nothing: make an exercise of it first (\"exercise\")"_phrase;
inline constexpr auto kUnknownRequest =
    "the page asks for what its program does not know: reload the page"_phrase;
inline constexpr auto kNothingAsked = "asks nothing: give at least one question"_phrase;
inline constexpr auto kQuestionIsTextOrObject =
    "a question is a word, such as \"forces\", or an object with \"what\""_phrase;
inline constexpr auto kNoMemberBetween =
    "no member between \"{a}\" and \"{b}\": name another"_phrase;
inline constexpr auto kMemberIsTwoJoints = "a member is a list of its two joints"_phrase;
inline constexpr auto kToleranceRange = "must be from 0 to {most}"_phrase;
inline constexpr auto kMarksNotNegative = "must not be negative"_phrase;
inline constexpr auto kAskedTwice = "this is asked twice: keep one of the two"_phrase;
inline constexpr auto kAtNotOnPath =
    "the joint \"{joint}\" is not on the path: choose one of it"_phrase;
inline constexpr auto kPathTooShort = "a path needs at least two joints"_phrase;
inline constexpr auto kNoSuchLoads =
    "no case or combination \"{name}\": name one of the model"_phrase;
inline constexpr auto kAskedOfUnsolved =
    "this truss has no forces to be found: ask whether it is determinate, or make it stable"_phrase;
inline constexpr auto kAskedOfUndisplaced =
    "this truss has no displacements to be found: give its members E and A"_phrase;
inline constexpr auto kNotAnswers =
    "these are no answers to an exercise: they must say \"gussetAnswers\": 1"_phrase;
inline constexpr auto kAnswersOfLater =
    "written by a later version of Gusset: open them with that version"_phrase;
inline constexpr auto kAnswersOfAnother =
    "these answers are for another exercise, or the exercise was changed since"_phrase;
inline constexpr auto kOrderOfNoJoints =
    "only \"forces\" and \"member\" take joints in an order: leave \"order\" out"_phrase;
inline constexpr auto kNoSuchAnswer = "the exercise has nothing called \"{name}\" to answer"_phrase;
inline constexpr auto kNoAnswersInLink =
    "there are no answers in this link: paste all of it"_phrase;
inline constexpr auto kNoSuchEquation =
    "an equation needs a term for each force on the body, and moments need a centre"_phrase;
inline constexpr auto kCutPartsNothing =
    "the members that are cut must part the truss in two, and \"part\" must be a joint of one "
    "part"_phrase;
inline constexpr auto kMomentsNeedCentre = "moments are about a joint: give \"about\""_phrase;
inline constexpr auto kNotTyped =
    "\"{text}\" is no number here: write a size such as 12.5, with its unit if you like"_phrase;
inline constexpr auto kNoWholeNumber =
    "\"{text}\" is no whole number: write one such as 0, 1 or 2"_phrase;
inline constexpr auto kSenseIsOneOf = "must be \"T\", \"C\" or \"0\""_phrase;
inline constexpr auto kSignIsOneOf = "must be \"+\", \"-\" or \"0\""_phrase;
inline constexpr auto kSizeNotNegative = "a size is not negative: give the sense beside it"_phrase;

} // namespace gusset::phrase
