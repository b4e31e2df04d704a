#pragma once
// Raw deflate (RFC 1951) with the dictionary of link form 1. zlib is built from the same source
// everywhere, so the same text gives the same bytes natively and in the page.

#include "exchange/links/base64url.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] Bytes deflated(std::string_view text);

enum class InflateFault { TooLarge, Damaged };
struct Inflated {
    std::string text;
    std::optional<InflateFault> fault;
};
// Uses no more memory than `largest` bytes and a window, whatever the input.
[[nodiscard]] Inflated inflated(const Bytes&, std::size_t largest);

} // namespace gusset
