#pragma once
// How loads between joints, and self-weight, are shared out to the joints.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kSharesOfChord =
    "{load} {direction} along {joints}: each joint carries the horizontal length up to halfway to "
    "its neighbours"_phrase;
inline constexpr auto kSharesOfMember =
    "{load} on {member}, {at} from {joint} on its length of {span}: by the law of the lever, the "
    "nearer joint takes more"_phrase;
inline constexpr auto kTwoParts = "{first} and {second}"_phrase;
inline constexpr auto kForceDirected = "{size} {direction}"_phrase;
inline constexpr auto kSharesOfWeight =
    "Self-weight: each joint carries half the weight of every member that meets there"_phrase;
inline constexpr auto kSharesAdded = "What comes to one joint, added up"_phrase;
inline constexpr auto kColumnLength = "Length"_phrase;
inline constexpr auto kColumnMembers = "Members"_phrase;
inline constexpr auto kColumnShare = "Share"_phrase;
inline constexpr auto kColumnSum = "Sum"_phrase;
inline constexpr auto kColumnDirected = "{name} {arrow}"_phrase;

} // namespace gusset::phrase
