#pragma once
// Checks that output is valid in its format, with scanners that share nothing with the code that
// writes it. Each returns the first fault, or an empty text.

#include <string>
#include <string_view>

namespace gusset::support {

// UTF-8 without surrogates or overlong forms (RFC 3629).
[[nodiscard]] std::string faultOfUtf8(std::string_view);
// One JSON value (RFC 8259) in UTF-8, numbers finite.
[[nodiscard]] std::string faultOfJson(std::string_view);
// Elements closed in order, attributes in quotes, known entities, characters that XML allows; a
// whole HTML document may begin with its doctype and have <meta>.
[[nodiscard]] std::string faultOfMarkup(std::string_view);
// Rows of equal width, quotes in pairs (RFC 4180).
[[nodiscard]] std::string faultOfCsv(std::string_view);
// No "nan" or "inf" in place of a number.
[[nodiscard]] std::string faultOfNumbers(std::string_view);

} // namespace gusset::support
