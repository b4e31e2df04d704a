#pragma once
// Influence lines and moving loads.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kEffectForce = "the force in {member}"_phrase;
inline constexpr auto kEffectMoveX = "the displacement of {joint} to the right"_phrase;
inline constexpr auto kEffectMoveY = "the displacement of {joint} upwards"_phrase;
inline constexpr auto kInfluenceBoth =
    "Influence line of {effect}, for a unit load that acts downwards: it reaches "
    "{high} at {highJoint} and {low} at {lowJoint}."_phrase;
inline constexpr auto kInfluenceOne =
    "Influence line of {effect}, for a unit load that acts downwards: "
    "it reaches {value} at {joint}."_phrase;
inline constexpr auto kInfluenceNone =
    "Influence line of {effect}: it is zero wherever the load stands."_phrase;
inline constexpr auto kColumnFromStart = "from the start"_phrase;
inline constexpr auto kColumnOrdinate = "ordinate"_phrase;
inline constexpr auto kColumnExactly = "exactly"_phrase;
inline constexpr auto kInfluenceAreas =
    "The area above the axis is {positive}, the area below it {negative}."_phrase;
inline constexpr auto kMovingHeading = "Loads that move along this path"_phrase;
inline constexpr auto kTrainAt =
    "{load}: {value}, with axle {axle} on {joint}, facing {way}"_phrase;
inline constexpr auto kUniformFromTo =
    "{load}, spread load: {value}, standing from {from} to {to}"_phrase;
inline constexpr auto kUniformWorst =
    "{load}, spread load: {value}, standing where it is worst"_phrase;
inline constexpr auto kNothingFrom = "{load}: nothing, wherever it stands"_phrase;
inline constexpr auto kFacingLeft = "left"_phrase;
inline constexpr auto kFacingRight = "right"_phrase;
inline constexpr auto kReadOnJoint = "Load on {joint}, {distance} from {start}: {value}"_phrase;
inline constexpr auto kReadBetween = "Load {distance} from {start}: {value}"_phrase;
inline constexpr auto kReadAtStart = "Load on {start}: {value}"_phrase;

} // namespace gusset::phrase
