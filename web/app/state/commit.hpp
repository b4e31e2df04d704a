#pragma once
// What is done with an edit read from typed text.

#include "app/state/action.hpp"
#include "core/outcome.hpp"

namespace gusset {

// Commits it, or says why it can't be done. True if it was committed.
bool commitOrSay(const Outcome<Edit>&, Actions&);

} // namespace gusset
