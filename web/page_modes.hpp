#pragma once
// What goes with reading mode and with presenting.

#include "page.hpp"

namespace gusset {

// The working has a small page to itself: this enters reading mode and leaves it.
void keepReading(Page&);
// Large type lays the pages of the notebook out anew: keeps their scrolls, or brings them back.
// Call before the look of the page is set.
void keepScrolls(Page&, bool presenting);

} // namespace gusset
