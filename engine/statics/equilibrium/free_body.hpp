#pragma once
// The truss as a free body, without its supports.

#include "statics/equilibrium/structure.hpp"
#include "statics/matrix/factors.hpp"

namespace gusset {

// In how many independent ways it can move with all members keeping their length: three if it is
// rigid in itself. Computed from the factors of the whole equilibrium matrix.
[[nodiscard]] int motionsWithoutSupports(const Structure&, const Factors<double>&);

} // namespace gusset
