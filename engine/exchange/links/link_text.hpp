#pragma once
// The characters of a link of form 1 around its deflated bytes: `m=1.<base64url>.<length>.<check>`.
// The count of the bytes comes before them, so that a link that was cut short can still tell how
// much of it arrived: chat programs usually cut off the end, and with it `length`, the count of
// base64url characters.

#include "core/outcome.hpp"
#include "exchange/links/base64url.hpp"

#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] std::string sealedLink(Bytes deflated);

// The deflated bytes, or in what way the text is damaged. `fragment` begins with "m=".
[[nodiscard]] Outcome<Bytes> unsealedLink(std::string_view fragment);

} // namespace gusset
