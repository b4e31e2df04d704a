#pragma once
// What becomes of an edit that was read from typed text.

#include "app/state/action.hpp"
#include "core/outcome.hpp"

namespace gusset {

// Commits it, or says why it can't be done. True when it is committed.
bool commitOrSay(const Outcome<Edit>&, Actions&);

} // namespace gusset
