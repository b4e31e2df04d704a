#pragma once
// What the author of a model may not have intended, and what has no part in its results.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kHasNoMember = "joint {joint} has no member: join it or remove it"_phrase;
inline constexpr auto kMembersCross =
    "members {a} and {b} cross: they are taken to pass without touching"_phrase;
inline constexpr auto kRunsThrough =
    "member {member} runs through joint {joint} without being joined to it: split it there if they "
    "meet"_phrase;
inline constexpr auto kOnOneSpot =
    "joints {a} and {b} lie on one spot and are not connected there: make them one joint"_phrase;
inline constexpr auto kOtherAlphabet =
    "\"{name}\" looks like \"{other}\" of {place} and is written in another alphabet: rename one "
    "of the two"_phrase;
inline constexpr auto kPathLacksMember =
    "no member joins {a} and {b}: name the joints that the load passes, one after the other"_phrase;
inline constexpr auto kPathTurnsBack =
    "the path turns back or upright between {a} and {b}: let it lead on to one side"_phrase;
inline constexpr auto kCaseWithoutLoad =
    "no load is in case \"{case}\": give it one, or take its factor out"_phrase;
inline constexpr auto kMovingLeftOut =
    "moving loads have no part in these results: ask for influence lines along their path"_phrase;

} // namespace gusset::phrase
