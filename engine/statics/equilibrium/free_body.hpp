#pragma once
// The body that a truss is when its supports are taken away.

#include "statics/equilibrium/structure.hpp"
#include "statics/matrix/factors.hpp"

namespace gusset {

// In how many independent ways it can move without a change of any member's length: three if it is
// rigid in itself. From the factors of the whole equilibrium matrix.
[[nodiscard]] int motionsWithoutSupports(const Structure&, const Factors<double>&);

} // namespace gusset
