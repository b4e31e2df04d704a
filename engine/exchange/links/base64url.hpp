#pragma once
// RFC 4648 §5 without padding: bytes as characters that need no escaping in an address.

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

using Bytes = std::vector<std::uint8_t>;

[[nodiscard]] std::string toBase64Url(const Bytes&);
[[nodiscard]] bool isBase64Url(char);
// Nothing if there is an invalid character or the text ends within a byte.
[[nodiscard]] std::optional<Bytes> fromBase64Url(std::string_view);
// The number of characters that this many bytes become.
[[nodiscard]] std::size_t base64UrlLength(std::size_t bytes);

} // namespace gusset
