#pragma once
// Reads a working as a sceptic would: every equation is evaluated from its own terms, no value is
// used before it was found, and the results are compared with the solver's.

#include "hand/paper/working.hpp"

#include <string>
#include <vector>

namespace gusset::support {

// The first thing that a reader would object to, or empty.
[[nodiscard]] std::string objectionTo(const Truss&, const Working&, const Solution&);

// The same for a chain of steps that must give these symbols and need not give others.
[[nodiscard]] std::string objectionToChain(const Truss&, const Working&, const Solution&,
                                           const std::vector<Symbol>&);

// Works the truss out and reads that; also checks that it is solved at all.
[[nodiscard]] std::string objectionToWorkingOf(const Truss&);

[[nodiscard]] int countSteps(const Working&, StepKind);

} // namespace gusset::support
