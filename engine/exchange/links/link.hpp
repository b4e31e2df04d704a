#pragma once
// A model as the fragment of a link: `m=1.<base64url>.<length>.<check>`. Compact array-shaped JSON,
// raw deflate (RFC 1951) with a preset dictionary, base64url (RFC 4648 §5) without padding, the
// count of base64url characters, a checksum; the last character is always a letter or digit, since
// mail and chat programs drop trailing signs. `j=` with percent-encoded model JSON is read as well.
// A link is a stranger's input: sizes are bounded before memory is spent.
//
// Behind the model may stand what is looked at: `&case=<name>` or `&combination=<id>`, every
// character but letters and digits percent-encoded (RFC 3986 §2.1). It is no part of the model, and
// readLink passes over it, as every earlier version did.

#include "exchange/files/model_file.hpp"
#include "statics/equilibrium/structure.hpp"

#include <string>
#include <string_view>

namespace gusset {

// Characters from "m=" on: of what is read and of what openableLink gives back.
inline constexpr std::size_t kLargestLink = 64u << 10;
inline constexpr std::size_t kLargestInflated = 1u << 20; // bytes

// The fragment without '#', however long: see openableLink.
[[nodiscard]] std::string writeLink(const Truss&);

// The fragment without '#', with what is looked at; or why there is none: every link that this
// gives back is one that readLink opens to the same truss.
[[nodiscard]] Outcome<std::string> openableLink(const Truss&, const LoadChoice& = {});

// Takes a whole address, a fragment with or without '#', and forgives what programs put around a
// link: trailing ).,>"'* and %29 %3E. Damage is told from a fault of the model: "the link is
// incomplete: 310 of 402 characters arrived".
[[nodiscard]] Outcome<Reading> readLink(std::string_view text);

[[nodiscard]] bool looksLikeLink(std::string_view text);

// The loads that a link asks to look at: empty where it asks for none, an issue where its truss has
// no such case or combination.
[[nodiscard]] Outcome<LoadChoice> linkedLoads(std::string_view text, const Truss&);

} // namespace gusset
