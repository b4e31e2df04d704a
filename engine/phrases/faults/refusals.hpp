#pragma once
// Why an edit can't be made, or a usual form not drawn.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kJointGone = "that joint is no longer there"_phrase;
inline constexpr auto kMemberGone = "that member is no longer there"_phrase;
inline constexpr auto kSupportGone = "that support is no longer there"_phrase;
inline constexpr auto kLoadGone = "that load is no longer there"_phrase;
inline constexpr auto kMaterialGone = "that material is no longer there"_phrase;
inline constexpr auto kSectionGone = "that section is no longer there"_phrase;
inline constexpr auto kCopiedGone = "that thing to copy is no longer there"_phrase;
inline constexpr auto kLabelTaken = "there is a joint {label} already: choose another label"_phrase;
inline constexpr auto kLiesAlong =
    "a member can't lie along member {member}: end it somewhere else"_phrase;
inline constexpr auto kNeedsTwoJoints =
    "a member needs two different joints: end it somewhere else"_phrase;
inline constexpr auto kMemberThere = "member {member} already exists"_phrase;
inline constexpr auto kChordLoadTurned =
    "a load along a chord acts straight up or down, so a copy can't be turned: leave the load out, "
    "or copy it upright"_phrase;
inline constexpr auto kFormNeedsSizes = "span and rise must be greater than zero"_phrase;
inline constexpr auto kFormLoadTooLarge = "the load must be a number of reasonable size"_phrase;

} // namespace gusset::phrase
