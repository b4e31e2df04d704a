#pragma once
// A walk round the joints with one force called X, or two called X and Y.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kTitleOneLetter = "One force called X"_phrase;
inline constexpr auto kTitleTwoLetters = "Two forces called X and Y"_phrase;
inline constexpr auto kCallOne =
    "If one more force were known, one joint after another would follow. So call {force} X and "
    "write the others with X in them, until a joint has an equation to spare: that one gives "
    "X."_phrase;
inline constexpr auto kCallTwo =
    "If two more forces were known, one joint after another would follow. So call {first} X and "
    "{second} Y and write the others with X and Y in them, until there are two equations to "
    "spare: these give X and Y."_phrase;
inline constexpr auto kWalkJoint = "Joint {joint} gives {unknowns}:"_phrase;
inline constexpr auto kWalkSpare =
    "Joint {joint} has this equation to spare, in which every force is known or written with "
    "letters:"_phrase;
inline constexpr auto kWalkX = "That gives X, which is {force}:"_phrase;
inline constexpr auto kWalkRestX = "With X known, so are the forces written with it:"_phrase;
inline constexpr auto kWalkRestBoth =
    "With X and Y known, so are the forces written with them:"_phrase;

} // namespace gusset::phrase
