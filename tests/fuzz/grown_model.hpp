#pragma once
// Models with everything that the format can hold, some with geometry and numbers at the limits of
// computation. The same state of the generator gives the same model on every platform.

#include "model/truss/truss.hpp"
#include "support/random.hpp"

namespace gusset::support {

// A truss of some family, with names, units, class and check settings, properties, strains, loads
// of every kind, cases, combinations and moving loads. Mostly valid; sometimes with extreme
// geometry (flat, far, close, large, small), wild numbers, or parts missing or duplicated.
[[nodiscard]] Truss grownModel(Random&);

// Its steps, each also tested separately.
[[nodiscard]] Truss skeleton(Random&);
void dress(Truss&, Random&);
void bendGeometry(Truss&, Random&);
void loseParts(Truss&, Random&);

} // namespace gusset::support
