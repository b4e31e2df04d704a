#pragma once
// Notes on the board and in its pictures.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kSelfWeightIs = "self-weight of all members: {sum}"_phrase;
// How many values have room on the drawing, where not all have.
inline constexpr auto kForcesOf = "{n} of {total} forces"_phrase;
inline constexpr auto kLettersOf = "{n} of {total} joint letters"_phrase;
inline constexpr auto kLoadsOf = "{n} of {total} loads"_phrase;
inline constexpr auto kReactionsOf = "{n} of {total} reactions"_phrase;
inline constexpr auto kDimensionsOf = "{n} of {total} dimensions"_phrase;
inline constexpr auto kShownZoomIn = "{list} shown: zoom in"_phrase;

// In a saved picture: above the drawing, and below it.
inline constexpr auto kUnderLoads = "under {loads}"_phrase;
inline constexpr auto kUnderAllLoads = "under all loads together"_phrase;
inline constexpr auto kMemberForcesIn = "Member forces in {unit}"_phrase;
inline constexpr auto kSignMeans = "{letter}  {word}"_phrase;
inline constexpr auto kWithoutRoom = "Without room in the drawing: {list}."_phrase;
inline constexpr auto kKeyEntry = "{what} {value}"_phrase;
inline constexpr auto kKeyOfJoint = "joint {joint} at x {x}, y {y}"_phrase;

} // namespace gusset::phrase
