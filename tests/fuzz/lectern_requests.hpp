#pragma once
// What the lesson's page asks of the lectern about one model, in order: it is opened first.

#include "model/truss/truss.hpp"
#include "support/random.hpp"

#include <string>
#include <vector>

namespace gusset::support {

// With a plan of several derivations, its author's remarks and questions. Places, sizes, times,
// typed texts and files are chosen at random; many of them make no sense.
[[nodiscard]] std::vector<std::string> lecternRequests(const Truss&, Random&);

} // namespace gusset::support
