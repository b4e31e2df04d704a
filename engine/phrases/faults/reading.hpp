#pragma once
// What is wrong with a model file, and what is noted about it. Words in quotes are keys and words
// of the file. Braces that are shown are parts, as those in a phrase enclose the name of one.

#include "core/phrase.hpp"

namespace gusset::phrase {

// Places other than a path such as members[3].b.
inline constexpr auto kPlaceModel = "the model"_phrase;
inline constexpr auto kPlaceFile = "the file"_phrase;
inline constexpr auto kPlaceText = "the text"_phrase;
inline constexpr auto kPlaceInText = "line {line}, column {column}"_phrase;

// The text as JSON.
inline constexpr auto kNotJson = "not JSON: {what}"_phrase;
inline constexpr auto kNotJsonAt = "not JSON at {place}: {what}"_phrase;
inline constexpr auto kDuplicateKey = "duplicate key: keep one of the two"_phrase;
inline constexpr auto kNotANumber = "{word} is not a number: write a finite one"_phrase;
inline constexpr auto kNestedTooDeep = "nested more than {n} deep, which no model is"_phrase;
inline constexpr auto kTooManyValues = "more than {n} values, which is too much to read"_phrase;
inline constexpr auto kIsUtf16 = "is UTF-16: save it as UTF-8"_phrase;
inline constexpr auto kNotUtf8 = "not UTF-8 text: save the file as UTF-8"_phrase;
inline constexpr auto kHoldsZero =
    "holds the character U+0000, as UTF-16 does: save the file as UTF-8"_phrase;
inline constexpr auto kTextEmpty = "is empty: a model of Gusset begins with {brace}"_phrase;
inline constexpr auto kTextBlank =
    "holds nothing but spaces: a model of Gusset begins with {brace}"_phrase;
inline constexpr auto kFileTooLarge =
    "is larger than {size} MB, which is too much to read: no truss needs so much"_phrase;

// Kinds of values.
inline constexpr auto kMustBeKind = "must be {wanted}, not {given}"_phrase;
inline constexpr auto kMissingKind = "is missing: it must be {wanted}"_phrase;
inline constexpr auto kKindNull = "null"_phrase;
inline constexpr auto kKindBoolean = "true or false"_phrase;
inline constexpr auto kKindNumber = "a number"_phrase;
inline constexpr auto kKindText = "text in quotes"_phrase;
inline constexpr auto kKindList = "a list in [ ]"_phrase;
inline constexpr auto kKindObject = "an object in {braces}"_phrase;

// Keys and words.
inline constexpr auto kUnknownKey = "the key \"{key}\" is unknown here; it is kept"_phrase;
inline constexpr auto kUnknownWord = "\"{word}\" has no meaning here: use one of {words}"_phrase;
inline constexpr auto kUnknownUnit =
    "no unit \"{unit}\" here: use one of {units}, or \"\" for none"_phrase;
inline constexpr auto kMustBeWholeUpTo = "must be a whole number from 0 to {most}"_phrase;
inline constexpr auto kVersionMissing = "is missing: a model of Gusset says \"gusset\": 1"_phrase;
inline constexpr auto kVersionLater =
    "written by a later version of Gusset: open it with that version"_phrase;
inline constexpr auto kVersionUnknown = "must be 1, the version of the format"_phrase;
inline constexpr auto kNoJointNamed =
    "no joint \"{joint}\": add it under \"joints\" or name another"_phrase;
inline constexpr auto kMustBeLabel = "must be the label of a joint in quotes"_phrase;
inline constexpr auto kSupportKindMissing = "is missing: it must be \"pin\" or \"roller\""_phrase;
inline constexpr auto kReactionMissing =
    "is missing: a roller needs the direction of its reaction in degrees, 90 when it rolls on a "
    "level floor"_phrase;
inline constexpr auto kLoadIsOneOf =
    "a load is one of: \"joint\" with \"fx\" and \"fy\"; \"joint\" with \"size\" and \"angle\"; "
    "\"member\" with \"at\", \"fx\" and \"fy\"; \"chord\" with \"perLength\"; \"selfWeight\""_phrase;
inline constexpr auto kMustBeEnds =
    "must be the two joints of the member, as [\"A\", \"B\"]"_phrase;
inline constexpr auto kSelfWeightTrue =
    "must be true: leave the load out where no self-weight is meant"_phrase;
inline constexpr auto kFactorNotNumber = "must be a number, the factor of this case"_phrase;
inline constexpr auto kFactorsMissing =
    "is missing: give the factor of each case, as {open} \"dead\": 1.35 {close}"_phrase;

// In a table of translations.
inline constexpr auto kOtherParts = "has a translation with other parts"_phrase;

// Names that are cleaned as a model is read.
inline constexpr auto kBareNameReadAs =
    "the name \"{before}\" has nothing in it that can be seen: it is read as \"{now}\""_phrase;
inline constexpr auto kNameReadAs =
    "the name \"{before}\" has characters in it that can't be seen: it is read as \"{now}\""_phrase;
inline constexpr auto kCleanNameTaken =
    "\"{name}\" looks the same as \"{other}\": give each its own name"_phrase;

} // namespace gusset::phrase
