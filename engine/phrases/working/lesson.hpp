#pragma once
// What a lesson says that a working on paper does not.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kTitlePolygon = "The force polygon, line by line"_phrase;
inline constexpr auto kEdgeOfLoad = "{line} is the load at {joint}."_phrase;
inline constexpr auto kEdgeOfReaction = "{line} is the reaction at {joint}."_phrase;
inline constexpr auto kEdgeOfMember = "{line} is parallel to {member}."_phrase;
inline constexpr auto kTitleTraced = "The line, as the load moves"_phrase;
inline constexpr auto kUnderLoadAt = "With the load at {joint}: {value}."_phrase;
// Rows of a table that are shown after the first ones.
inline constexpr auto kTableGoesOn = "{caption}, continued."_phrase;
inline constexpr auto kTitleMoves = "How it moves"_phrase;
// What a lesson's author has put before a step.
inline constexpr auto kWhatIsTheForce = "What is the force in {member}?"_phrase;

// Of a plan that can't be kept.
inline constexpr auto kOutOfTurn =
    "Joint {joint} can’t be taken yet: {unknowns} are unknown there, and a joint gives two forces at most, which are not in one line. Take another joint first."_phrase;
inline constexpr auto kStagesDiffer =
    "“{step}” has another drawing than “{before}” before it: it can’t go on with that step."_phrase;

// Of the lesson's page.
inline constexpr auto kNotToBePacked =
    "is no list of files that can be packed into one: save the pictures one by one"_phrase;
inline constexpr auto kNoSuchPlace = "The lesson has no such step: open it again."_phrase;
inline constexpr auto kSayTensionOrCompression =
    "Say whether it is tension or compression: 12 T, or 12 C."_phrase;

} // namespace gusset::phrase
