#pragma once
// Lists, counts, and combinations of words.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kListTwo = "{a} and {b}"_phrase;
// All but the last item of a list; also the letters of one point, which have no "and".
inline constexpr auto kListMore = "{a}, {b}"_phrase;
inline constexpr auto kOneMember = "1 member"_phrase;
inline constexpr auto kManyMembers = "{n} members"_phrase;
inline constexpr auto kOneReaction = "1 reaction"_phrase;
inline constexpr auto kManyReactions = "{n} reactions"_phrase;
inline constexpr auto kListAndMore = "{list} and {n} more"_phrase;
// On the board: "24.75 T".
inline constexpr auto kForceWithLetter = "{value} {letter}"_phrase;
inline constexpr auto kInBrackets = "({word})"_phrase;
inline constexpr auto kColumnWithUnit = "{name}, {unit}"_phrase;
inline constexpr auto kOneJoint = "1 joint"_phrase;
inline constexpr auto kManyJoints = "{n} joints"_phrase;
inline constexpr auto kOneSupport = "1 support"_phrase;
inline constexpr auto kManySupports = "{n} supports"_phrase;
inline constexpr auto kOneLoad = "1 load"_phrase;
inline constexpr auto kManyLoads = "{n} loads"_phrase;

} // namespace gusset::phrase
