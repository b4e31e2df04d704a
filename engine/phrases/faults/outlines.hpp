#pragma once
// What is wrong with the outline of a truss in a file.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kNoOutline =
    "this model was not made from an outline, and holds none: give it a form, with its span and rise"_phrase;
inline constexpr auto kPanelsAreWhole = "the number of panels must be a whole number"_phrase;
inline constexpr auto kPitchOfRoofs =
    "a pitch is that of rafters, in degrees between 0 and 90; this form has a rise"_phrase;
inline constexpr auto kNationalValues =
    "national values stand under the kind of a load case, as three numbers: ψ0, ψ1 and ψ2"_phrase;

} // namespace gusset::phrase
