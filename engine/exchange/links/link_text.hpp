#pragma once
// The characters of a link of form 1 around its deflated bytes: `m=1.<base64url>.<length>.<check>`.
// In front of the bytes stands their count, so that a link cut short can say how much of it
// arrived; it stands again behind them as `length`, and what chat programs cut off is most often
// the end.

#include "core/outcome.hpp"
#include "exchange/links/base64url.hpp"

#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] std::string sealedLink(Bytes deflated);

// The deflated bytes, or how the text was damaged. `fragment` begins with "m=".
[[nodiscard]] Outcome<Bytes> unsealedLink(std::string_view fragment);

} // namespace gusset
