#pragma once
// A working as it is heard: signs of formulas in words.

#include "core/phrase.hpp"

namespace gusset::phrase {

// Signs of formulas.
inline constexpr auto kSaidEquals = "equals"_phrase;
inline constexpr auto kSaidAlmost = "is about"_phrase;
inline constexpr auto kSaidPlus = "plus"_phrase;
inline constexpr auto kSaidMinus = "minus"_phrase;
inline constexpr auto kSaidTimes = "times"_phrase;
inline constexpr auto kSaidSo = "so"_phrase;
inline constexpr auto kSaidOpen = "open bracket"_phrase;
inline constexpr auto kSaidClose = "close bracket"_phrase;
inline constexpr auto kSaidSum = "sum of {what}"_phrase;
inline constexpr auto kSaidOver = "{above} over {below}"_phrase;
inline constexpr auto kSaidRoot = "root of {what}"_phrase;
inline constexpr auto kSaidNegative = "minus {number}"_phrase;
inline constexpr auto kSaidInBrackets = "negative {number}"_phrase; // "(−3)" after another sign
inline constexpr auto kSaidLabel = "equation {number}"_phrase;      // "(1)"
inline constexpr auto kSaidFactor = "{factor} times {what}"_phrase;
inline constexpr auto kSaidSine = "sine"_phrase;
inline constexpr auto kSaidCosine = "cosine"_phrase;
inline constexpr auto kSaidTangent = "tangent"_phrase;
inline constexpr auto kSaidUp = "up"_phrase;
inline constexpr auto kSaidDown = "down"_phrase;
inline constexpr auto kSaidLeft = "to the left"_phrase;
inline constexpr auto kSaidRight = "to the right"_phrase;
inline constexpr auto kSaidWay = "{way} {value}"_phrase; // "to the right 3 kN"

// Units behind a number.
inline constexpr auto kSaidQuantity = "{number} {unit}"_phrase;
inline constexpr auto kSaidNewtons = "newtons"_phrase;
inline constexpr auto kSaidKilonewtons = "kilonewtons"_phrase;
inline constexpr auto kSaidMeganewtons = "meganewtons"_phrase;
inline constexpr auto kSaidPounds = "pounds"_phrase;
inline constexpr auto kSaidKips = "kips"_phrase;
inline constexpr auto kSaidMetres = "metres"_phrase;
inline constexpr auto kSaidCentimetres = "centimetres"_phrase;
inline constexpr auto kSaidMillimetres = "millimetres"_phrase;
inline constexpr auto kSaidFeet = "feet"_phrase;
inline constexpr auto kSaidInches = "inches"_phrase;
inline constexpr auto kSaidPer = "{unit} per {one}"_phrase; // "metres per kilonewton"
inline constexpr auto kSaidNewton = "newton"_phrase;
inline constexpr auto kSaidKilonewton = "kilonewton"_phrase;
inline constexpr auto kSaidMeganewton = "meganewton"_phrase;
inline constexpr auto kSaidPound = "pound"_phrase;
inline constexpr auto kSaidKip = "kip"_phrase;

// A sum, term by term: {arm} is a length.
inline constexpr auto kSaidTurnsLeftPlus = "{force}, {arm} away, turns anticlockwise: plus."_phrase;
inline constexpr auto kSaidTurnsLeftMinus =
    "{force}, {arm} away, turns anticlockwise: minus."_phrase;
inline constexpr auto kSaidTurnsRightPlus = "{force}, {arm} away, turns clockwise: plus."_phrase;
inline constexpr auto kSaidTurnsRightMinus = "{force}, {arm} away, turns clockwise: minus."_phrase;
inline constexpr auto kSaidLoadAt = "load at {joint}"_phrase;
inline constexpr auto kSaidWith = "Plus {force}."_phrase;
inline constexpr auto kSaidAgainst = "Minus {force}."_phrase;
inline constexpr auto kSaidProduct = "{force} times {factor}"_phrase;

} // namespace gusset::phrase
