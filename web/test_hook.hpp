#pragma once
// What a test of the page may know, so that it can press real buttons and compare with real
// results.

#include "page.hpp"

namespace gusset {

// JSON; good until the next call. The items are those of the last frame drawn after the first call.
[[nodiscard]] const char* observe(Page&);

} // namespace gusset
