#pragma once
// Requests that the page which chooses profiles makes, for one model.

#include "model/truss/truss.hpp"
#include "support/random.hpp"

#include <string>
#include <vector>

namespace gusset::support {

// Groups, grades, limits and ranges are chosen at random, a few of which make no sense.
[[nodiscard]] std::vector<std::string> workshopRequests(const Truss&, Random&);

} // namespace gusset::support
