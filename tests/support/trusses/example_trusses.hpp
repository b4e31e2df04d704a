#pragma once
// The models of site/examples, in the order of its index.

#include "model/truss/truss.hpp"

#include <vector>

namespace gusset::support {

[[nodiscard]] std::vector<Truss> exampleTrusses();

} // namespace gusset::support
