#pragma once
// What the panels request of the browser: files, links, pictures, other pages.

#include "page.hpp"

namespace gusset {

void carryOut(Page&, const PageRequests&);
void saveBoard(Page&); // as a file, and says so

} // namespace gusset
