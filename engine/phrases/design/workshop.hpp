#pragma once
// What can't be answered on the page that chooses profiles.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kNothingToDo = "this request asks for nothing that is known here"_phrase;
inline constexpr auto kNoKindsChosen =
    "there is nothing to choose from: take at least one kind of profiles, or a list of your own"_phrase;
inline constexpr auto kDeflectionRange =
    "a limit on the deflection is L/x, with x from 10 to 10,000; or there is none"_phrase;
inline constexpr auto kRangeRises = "the range must begin above zero and rise"_phrase;
inline constexpr auto kNotFromOutline =
    "this truss is not, or no more, as a form on the start page makes it, so that its rise and panels can’t be varied"_phrase;

} // namespace gusset::phrase
