#pragma once
// A model as the fragment of a link: `m=1.<base64url>.<length>.<check>`. Compact array-shaped JSON,
// raw deflate (RFC 1951) with a preset dictionary, base64url (RFC 4648 §5) without padding, the
// count of base64url characters, a checksum; the last character is always a letter or digit, since
// mail and chat programs drop trailing punctuation. `j=` with percent-encoded model JSON is read as
// well. Links are untrusted input: sizes are bounded before memory is allocated.
//
// The model may be followed by the loads to show: `&case=<name>` or `&combination=<id>`, every
// character except letters and digits percent-encoded (RFC 3986 §2.1). This is not part of the
// model, and readLink ignores it, as every earlier version did.

#include "exchange/files/model_file.hpp"
#include "statics/equilibrium/structure.hpp"

#include <string>
#include <string_view>

namespace gusset {

// Characters from "m=" on, both for links that are read and for those that openableLink returns.
inline constexpr std::size_t kLargestLink = 64u << 10;
inline constexpr std::size_t kLargestInflated = 1u << 20; // bytes

// The fragment without '#', however long: see openableLink.
[[nodiscard]] std::string writeLink(const Truss&);

// The fragment without '#', with the loads to show, or why there is none. readLink opens every link
// returned here to the same truss.
[[nodiscard]] Outcome<std::string> openableLink(const Truss&, const LoadChoice& = {});

// The same for students: it begins with "x=", so that the page shows the question of the truss and
// never its board.
[[nodiscard]] Outcome<std::string> exerciseLink(const Truss&);

// Takes a whole address, or a fragment with or without '#', and tolerates what programs put around
// a link: trailing ).,>"'* and %29 %3E. Damage is reported as such, not as a fault of the model:
// "the link is incomplete: 310 of 402 characters arrived".
[[nodiscard]] Outcome<Reading> readLink(std::string_view text);

// A file's text or a link, whichever it is.
[[nodiscard]] Outcome<Reading> readModelOrLink(std::string_view text);

[[nodiscard]] bool looksLikeLink(std::string_view text);

// The loads that a link asks to show: empty if it asks for none, an issue if its truss has no such
// case or combination.
[[nodiscard]] Outcome<LoadChoice> linkedLoads(std::string_view text, const Truss&);

} // namespace gusset
