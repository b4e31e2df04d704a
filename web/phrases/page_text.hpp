#pragma once
// The page's HTML beside the board, for those who can't see the drawing.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kTheModel = "The model"_phrase;
inline constexpr auto kWorkingHeading = "The working"_phrase;
inline constexpr auto kPressToType = "A value that is pressed can be typed over."_phrase;
inline constexpr auto kTitleIs = "Title: {title}"_phrase;
inline constexpr auto kNameInUnit = "{name} ({unit})"_phrase;
inline constexpr auto kAdd = "Add"_phrase;
inline constexpr auto kMoreRows =
    "{n} more rows are too many for this page: the notebook lists them, and the file holds "
    "them."_phrase;

// What a screen reader says of a button: its value, and of what.
inline constexpr auto kValueOf = "{value}: {what}"_phrase;
inline constexpr auto kAddThat = "Add: {what}"_phrase;
inline constexpr auto kEmptyCell = "empty"_phrase;

} // namespace gusset::phrase
