#pragma once
// Percent-encoding (RFC 3986 §2.1).

#include <string>
#include <string_view>

namespace gusset {

// Every byte but ASCII letters and digits, so that what comes out ends in one of these.
[[nodiscard]] std::string percentEncoded(std::string_view);

// What is no "%" with two hexadecimal digits stays as it is.
[[nodiscard]] std::string percentDecoded(std::string_view);

} // namespace gusset
