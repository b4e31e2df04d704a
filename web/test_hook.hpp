#pragma once
// What a browser test may see of the page, so that it can press real buttons and compare real
// results.

#include "page.hpp"

namespace gusset {

// JSON; valid until the next call. The items are those of the last frame drawn after the first
// call.
[[nodiscard]] const char* observe(Page&);

} // namespace gusset
