#pragma once
// Choosing profiles: groups of members, and why there is no choice.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kRoleUpperChord = "upper chord"_phrase;
inline constexpr auto kRoleLowerChord = "lower chord"_phrase;
inline constexpr auto kRolePosts = "posts"_phrase;
inline constexpr auto kRoleDiagonals = "diagonals"_phrase;

inline constexpr auto kGroupWithoutProfiles = "{group}: there is no profile to choose from"_phrase;
inline constexpr auto kGroupWithoutMembers = "{group}: there is no member in it"_phrase;
inline constexpr auto kProfileWithoutMass =
    "profile {profile} has no area, or its material no density, so that it can’t be weighed"_phrase;

} // namespace gusset::phrase
