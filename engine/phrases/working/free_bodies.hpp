#pragma once
// Free-body diagrams, for readers who can't see them.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kBodyWhole = "Free body of the whole truss: {forces}."_phrase;
inline constexpr auto kBodyOfJoint = "Free body of joint {joint}: {forces}."_phrase;
inline constexpr auto kBodyOfPart = "Free body of the part with {joints}: {forces}."_phrase;
inline constexpr auto kBodyForce = "{force}, drawn {direction}"_phrase;
inline constexpr auto kBodyLoad = "a load of {force} {direction}"_phrase;
inline constexpr auto kBodyAxis = "{body} The direction n points {direction}."_phrase;
inline constexpr auto kBodyNothing = "nothing acts on it"_phrase;

} // namespace gusset::phrase
