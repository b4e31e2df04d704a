#pragma once
// Sends events from the browser to the board or to the panels: the only place where that is
// decided.

#include "page.hpp"

namespace gusset {

void takeEvent(Page&, const PlatformEvent&);

} // namespace gusset
