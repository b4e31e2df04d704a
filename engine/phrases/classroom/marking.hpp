#pragma once
// The rule of marks, and what is said of an answer. {answer} is a member or a reaction, {where} the
// part of the truss: a joint, a section, the whole.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kRuleEach =
    "Each force or reaction has two marks: one for the method, one for the accuracy."_phrase;
inline constexpr auto kRuleCarried = "A value that follows from the student's own earlier values "
                                     "has both, though those be wrong; only the mark for the "
                                     "method if they make the step trivial."_phrase;
inline constexpr auto kRuleSlip =
    "A slip loses marks once, where it is made: the accuracy if the equation has the right terms "
    "or "
    "the slip is not recognised, both if a force is left out or not resolved."_phrase;
inline constexpr auto kRuleRight =
    "A right value has both marks, however it was found; a blank has none."_phrase;
inline constexpr auto kRuleZero = "Each member found to carry nothing has one mark, and each that "
                                  "is wrongly named loses one."_phrase;

inline constexpr auto kWhereJoint = "joint {joint}"_phrase;
inline constexpr auto kWhereWhole = "the whole truss"_phrase;
inline constexpr auto kWhereSection = "a section"_phrase;

inline constexpr auto kAnswerCarried =
    "{answer} = {written} follows from your own earlier values: no more marks are lost."_phrase;
inline constexpr auto kAnswerEased = "{answer} = {written} follows from your own earlier values, "
                                     "but these left nothing to work out."_phrase;
inline constexpr auto kAnswerUnsupported =
    "{answer} = {written} is right, but your other values give {expected}."_phrase;
inline constexpr auto kAnswerSameSlip =
    "{answer} = {written} comes of the same slip at {where}: no more marks are lost."_phrase;
inline constexpr auto kAnswerNotAgreed =
    "{answer} = {written} is right, but not all of your other values agree with it."_phrase;
inline constexpr auto kAnswerBlank = "{answer}: nothing is written."_phrase;
inline constexpr auto kAnswerHalf =
    "{answer}: a size and a sense are needed, and one is missing."_phrase;
inline constexpr auto kAnswerBoth =
    "{answer}: {written} is written and 0 is chosen, which contradict each other."_phrase;
inline constexpr auto kZerosNotRight =
    "The members that carry nothing are not named rightly: {marks} of {all} marks."_phrase;
inline constexpr auto kDegreeNotRight =
    "The degree of indeterminacy is wrong: {marks} of {all} marks."_phrase;
inline constexpr auto kDisplacementNotRight =
    "The displacement of joint {joint} is wrong: {marks} of {all} marks."_phrase;
inline constexpr auto kOrdinateNotRight =
    "The ordinate at {joint} of the influence line is wrong: {marks} of {all} marks."_phrase;
inline constexpr auto kDegreeBlank = "The degree of indeterminacy: no value is given."_phrase;
inline constexpr auto kDisplacementBlank =
    "The displacement of joint {joint}: no value is given."_phrase;
inline constexpr auto kOrdinateBlank =
    "The ordinate at {joint} of the influence line: no value is given."_phrase;
inline constexpr auto kSlipAt =
    "{answer} = {written}: a slip at {where}, where your other values give {expected}."_phrase;
inline constexpr auto kSlipOfUnit =
    "{answer} = {written}: all member forces are wrong by one factor of 1000. Is the unit "
    "right?"_phrase;
inline constexpr auto kAnswerOfUnit =
    "{answer} = {written} is wrong by the same factor: no more marks are lost."_phrase;
inline constexpr auto kSlipOnlyAt = "{answer} = {written}: a slip at {where}."_phrase;
inline constexpr auto kSlipOfKindAt =
    "{answer} = {written}: a slip at {where}. What went wrong: {kind}."_phrase;
inline constexpr auto kSlipInSum =
    "{answer} = {written}: a slip at {where}. With your other values "
    "{equation}, which gives {gives}."_phrase;
inline constexpr auto kTooManySlips = "Too much of this sheet is wrong for a few slips to explain "
                                      "it: each value is judged for itself."_phrase;
inline constexpr auto kStepsByHand =
    "The steps are marked by hand, out of {marks} more; these are not in the sum."_phrase;
inline constexpr auto kStepsByHandOpen =
    "The steps are marked by hand, and are not in the sum."_phrase;
inline constexpr auto kSlipSomewhere =
    "{answer} = {written} does not follow from your other values."_phrase;
inline constexpr auto kSlipOfKind = "{answer} = {written}: at {where} your other values give "
                                    "{expected}. What went wrong: {kind}."_phrase;

inline constexpr auto kKindLeftOut = "a force left out"_phrase;
inline constexpr auto kKindWrongSign = "the sign of a term"_phrase;
inline constexpr auto kKindSineForCosine = "sine for cosine"_phrase;
inline constexpr auto kKindNotResolved = "an inclined force not resolved"_phrase;
inline constexpr auto kKindToOneBar = "each member found as if it were alone"_phrase;
inline constexpr auto kKindReactionTurned = "a reaction turned round"_phrase;
inline constexpr auto kKindBySymmetry = "equal reactions without symmetry"_phrase;
inline constexpr auto kKindWrongArm = "the arm of a moment"_phrase;
inline constexpr auto kKindEarlierSign = "an earlier value with the wrong sign"_phrase;
inline constexpr auto kKindWrongSense = "right size, but tension for compression"_phrase;
inline constexpr auto kKindZeroMisjudged = "a member wrongly said to carry nothing"_phrase;
inline constexpr auto kKindWrongFactor = "a factor of 2, 10, 1000 or g"_phrase;
inline constexpr auto kKindDigitsSwapped = "two digits exchanged"_phrase;
inline constexpr auto kKindUnknown = "not recognised"_phrase;

inline constexpr auto kClassMarks = "{code}: {marks} of {all}"_phrase;
inline constexpr auto kClassSlips = "Slips of the class"_phrase;
inline constexpr auto kSlipCount = "{n} × {kind}"_phrase;
inline constexpr auto kMarksRule = "How marks are given"_phrase;

} // namespace gusset::phrase
