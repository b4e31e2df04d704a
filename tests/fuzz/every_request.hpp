#pragma once
// Every request that the classroom's pages make of the desk, for one model.

#include "model/truss/truss.hpp"
#include "support/random.hpp"

#include <string>
#include <vector>

namespace gusset::support {

// With an exercise that asks for everything without E and A, and answers, bodies, equations and
// typed texts chosen at random, a few of which make no sense.
[[nodiscard]] std::vector<std::string> everyRequest(const Truss&, Random&);

} // namespace gusset::support
