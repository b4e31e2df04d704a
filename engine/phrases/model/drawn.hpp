#pragma once
// What stands beside the lines of a truss in a drawing.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kDrawnPin = "pin"_phrase;
inline constexpr auto kDrawnRoller = "roller, reaction at {angle}°"_phrase;
inline constexpr auto kDrawnForce = "Fx = {fx} {unit}, Fy = {fy} {unit}"_phrase;
inline constexpr auto kDrawnAngled = "{size} {unit} at {angle}°"_phrase;
inline constexpr auto kDrawnChord = "{size} {force}/{length} from {from} to {to}"_phrase;
inline constexpr auto kDrawnSelfWeight = "self-weight of the members"_phrase;
inline constexpr auto kDrawnInCase = "{load} ({case})"_phrase;

} // namespace gusset::phrase
