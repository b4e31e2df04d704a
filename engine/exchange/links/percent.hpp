#pragma once
// Percent-encoding (RFC 3986 §2.1).

#include <string>
#include <string_view>

namespace gusset {

// Encodes every byte except ASCII letters and digits, so that the result ends in one of these.
[[nodiscard]] std::string percentEncoded(std::string_view);

// Anything that is not "%" with two hexadecimal digits stays unchanged.
[[nodiscard]] std::string percentDecoded(std::string_view);

} // namespace gusset
