#pragma once
// Whether what was printed is what it claims to be: scanners of their own, which share nothing with
// the code that writes. Each gives back what is wrong first, or nothing.

#include <string>
#include <string_view>

namespace gusset::support {

// UTF-8 without surrogates and overlong forms (RFC 3629).
[[nodiscard]] std::string faultOfUtf8(std::string_view);
// One JSON value (RFC 8259) in UTF-8, numbers finite.
[[nodiscard]] std::string faultOfJson(std::string_view);
// Elements that close in order, attributes in quotes, known entities, characters that XML allows.
[[nodiscard]] std::string faultOfMarkup(std::string_view);
// Rows of one width, quotes in pairs (RFC 4180).
[[nodiscard]] std::string faultOfCsv(std::string_view);
// "nan" or "inf" where a number should stand.
[[nodiscard]] std::string faultOfNumbers(std::string_view);

} // namespace gusset::support
