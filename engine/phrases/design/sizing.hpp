#pragma once
// Choosing profiles: groups of members, and why there is no choice.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kRoleUpperChord = "upper chord"_phrase;
inline constexpr auto kRoleLowerChord = "lower chord"_phrase;
inline constexpr auto kRolePosts = "posts"_phrase;
inline constexpr auto kRoleDiagonals = "diagonals"_phrase;

inline constexpr auto kNoSuchGrade =
    "there is no grade {grade}: take one of steel, such as S235, S355 or A992, or a class of timber, such as C24"_phrase;
inline constexpr auto kGroupWithoutProfiles = "{group}: there is no profile to choose from"_phrase;
inline constexpr auto kGroupWithoutMembers = "{group}: there is no member in it"_phrase;
inline constexpr auto kProfileWithoutMass =
    "profile {profile} has no area, or its material no density, so that it can’t be weighed"_phrase;

inline constexpr auto kSizedGroup =
    "{group}: {profile}, {members}, {length}, {mass}; member {worst} is used most, {use}."_phrase;
inline constexpr auto kSizedNextLighter =
    "{group}: {profile}, the next lighter one of the list, would not do."_phrase;
inline constexpr auto kSizedNotEnough =
    "{group}: no profile of the list is enough. With the heaviest, {profile}, member {worst} is used {use}."_phrase;
inline constexpr auto kSizedNotEnoughData =
    "{group}: no profile of the list can be taken. With the heaviest, {profile}, member {worst} is not covered by the checks or lacks data."_phrase;
inline constexpr auto kSizedMass = "All members that can be weighed: {mass}."_phrase;
inline constexpr auto kSizedMoves = "Joints move up or down by at most {moved} in service."_phrase;
inline constexpr auto kSizedMovesTooFar =
    "Joints move up or down by {moved} in service, more than {allowed}: heavier profiles of these lists do not help."_phrase;
inline constexpr auto kSizedMovesUnknown =
    "How far joints move is not known: a member has no section with its area, or no material with its E."_phrase;
inline constexpr auto kSizeUnstable =
    "the truss is unstable, or is held only by how it is loaded: brace it, then choose profiles"_phrase;
inline constexpr auto kSizedNoWeight = "Own weight is not among the loads."_phrase;
inline constexpr auto kSizedShares =
    "Different profiles: {count}. Then at least {mass} under the same forces, {more} more."_phrase;

inline constexpr auto kPathBegins = "{group}: begins with the lightest, {to}"_phrase;
inline constexpr auto kPathStrength =
    "{group}: {from} is not enough for member {member}, used {use}; {to}"_phrase;
inline constexpr auto kPathSlender =
    "{group}: member {member} is too slender with {from}; {to}"_phrase;
inline constexpr auto kPathDeflection = "{group}: joints move too far; {from} becomes {to}"_phrase;
inline constexpr auto kPathLighter = "{group}: {to} is enough now, in place of {from}"_phrase;
inline constexpr auto kPathServes =
    "{group}: {from} becomes {to}, so that others can be lighter by more"_phrase;
inline constexpr auto kPathNoneEnough =
    "{group}: {from} is not enough for member {member}, and no other is; the heaviest is {to}"_phrase;
inline constexpr auto kPathOtherReason =
    "{group}: with {from}, member {member} is not covered by the checks or lacks data; {to}"_phrase;

} // namespace gusset::phrase
