#pragma once
// Numbers and text as drawings write them. Private to exchange/drawings.

#include "core/statement.hpp"
#include "core/vec2.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace gusset {

// Text that is no UTF-8 is read as ISO 8859-1, in which every byte is a letter.
[[nodiscard]] std::string asUtf8(std::string_view);
[[nodiscard]] std::string_view withoutSpaces(std::string_view); // around it

// Digits with a point and an exponent, nothing else around them but spaces: no NaN, no infinity, no
// hexadecimal, nothing beyond kLargestDrawn.
[[nodiscard]] std::optional<double> drawnNumber(std::string_view);
[[nodiscard]] std::optional<int> drawnWhole(std::string_view);

[[nodiscard]] Statement measured(double); // for messages
[[nodiscard]] Statement placeAt(Vec2);    // "(3, 4.5)"

} // namespace gusset
