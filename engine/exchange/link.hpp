#pragma once
// A model as the fragment of a link: `m=1.<base64url>.<length>.<check>`. Compact array-shaped JSON,
// raw deflate (RFC 1951) with a preset dictionary, base64url (RFC 4648 §5) without padding, the
// count of base64url characters, a checksum; the last character is always a letter or digit, since
// mail and chat programs drop trailing signs. `j=` with percent-encoded model JSON is read as well.
// A link is a stranger's input: sizes are bounded before memory is spent.

#include "exchange/json.hpp"

#include <string>
#include <string_view>

namespace gusset {

inline constexpr std::size_t kLargestLink = 64u << 10;    // characters that are looked at
inline constexpr std::size_t kLargestInflated = 1u << 20; // bytes

// The fragment without '#'.
[[nodiscard]] std::string writeLink(const Truss&);

// Takes a whole address, a fragment with or without '#', and forgives what programs put around a
// link: trailing ).,>"'* and %29 %3E. Damage is told from a fault of the model: "the link is
// incomplete: 310 of 402 characters arrived".
[[nodiscard]] Outcome<Reading> readLink(std::string_view text);

[[nodiscard]] bool looksLikeLink(std::string_view text);

} // namespace gusset
