#pragma once
// What goes with reading mode.

#include "page.hpp"

namespace gusset {

// The working has a small page to itself: this enters reading mode and leaves it.
void keepReading(Page&);

} // namespace gusset
