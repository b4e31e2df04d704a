#pragma once
// The page's HTML beside the board, for those who can't see the drawing.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kTheModel = "The model"_phrase;
inline constexpr auto kPressToType = "A value that is pressed can be typed over."_phrase;

} // namespace gusset::phrase
