#pragma once
// What the browser brought goes to the board or to the panels: the one place where that is decided.

#include "page.hpp"

namespace gusset {

void takeEvent(Page&, const PlatformEvent&);

} // namespace gusset
