#pragma once
// Sums of forces along a direction n, at right angles to a line of forces.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kAcrossOne =
    "At right angles to {others}, in the direction n, the only unknown is {left}."_phrase;
inline constexpr auto kAcrossLine = "{others} act in one line. At right angles to it, in the "
                                    "direction n, the only unknown is {left}."_phrase;
inline constexpr auto kAcrossParallels = "{others} are parallel. At right angles to them, in the "
                                         "direction n, the only unknown is {left}."_phrase;
inline constexpr auto kTurnedForce = "{force} makes the angle {angle} with {line}: its part along "
                                     "n is {force} times the sine of that angle."_phrase;
inline constexpr auto kTurnedUpright =
    "The part of a vertical force along n is its size times {part}."_phrase;
inline constexpr auto kTurnedLevel =
    "The part of a horizontal force along n is its size times {part}."_phrase;
inline constexpr auto kPartsAlongN =
    "The part of a force along n is made up of its horizontal part times {level} and its vertical "
    "part times {upright}."_phrase;

} // namespace gusset::phrase
