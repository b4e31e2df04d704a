#pragma once
// What is wrong with a typed number, quantity or pair of numbers.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kCantReadWord = "can't read \"{word}\" here"_phrase;
inline constexpr auto kCantReadSign = "can't read the sign {sign}"_phrase;
inline constexpr auto kNotFinite = "does not give a finite number"_phrase;
inline constexpr auto kTypedTooLarge = "{number} is too large a number"_phrase;
inline constexpr auto kOneHasUnit =
    "one number has a unit and another has none: give both a unit"_phrase;
inline constexpr auto kTwoUnits = "has two units, the second \"{unit}\": leave one out"_phrase;
inline constexpr auto kUnitTimesUnit = "multiplies a unit by a unit: leave one out"_phrase;
inline constexpr auto kByUnit = "divides by a unit: leave it out"_phrase;
inline constexpr auto kByZero = "divides by zero"_phrase;
inline constexpr auto kTypeNumber = "is empty: type a number"_phrase;
inline constexpr auto kEndsTooSoon = "ends too soon: a number is missing"_phrase;
inline constexpr auto kNumberMissing = "a number is missing before \"{sign}\""_phrase;
inline constexpr auto kNumberMissingBefore =
    "can't read \"{word}\": a number is missing before it"_phrase;
inline constexpr auto kTooManyParentheses = "has too many parentheses"_phrase;
inline constexpr auto kParenthesisMissing = "a closing parenthesis is missing"_phrase;
inline constexpr auto kTwoNumbers =
    "two numbers stand side by side ({a} and {b}): put a sign between them"_phrase;
inline constexpr auto kNeedsPlainNumber = "{function} needs a number without a unit"_phrase;
inline constexpr auto kHasNoValue = "{function} has no value there"_phrase;
inline constexpr auto kThousandsCommas =
    "can't read {number}: leave out the commas between thousands"_phrase;
inline constexpr auto kReadTwoWays =
    "{number} may be read in two ways: write {decimal} or {whole}"_phrase;
inline constexpr auto kTooLongToRead = "too long to read: type a number"_phrase;
inline constexpr auto kNeedsTwoNumbers =
    "needs two numbers: size @ angle, as 5 @ 30°, or both components, as 3; -4"_phrase;

// {remedy} is one of those below.
inline constexpr auto kNoUnitHere = "\"{unit}\" can't be read here: {remedy}"_phrase;
inline constexpr auto kModelHasNoUnit =
    "this model has no unit here, so type a number alone"_phrase;
inline constexpr auto kThereAreUnits = "use one of {units}"_phrase;
inline constexpr auto kTypeNumberAlone = "type a number alone"_phrase;
inline constexpr auto kTypeDegrees = "type degrees, or rad"_phrase;

} // namespace gusset::phrase
