#pragma once
// Models of every kind that the format can hold, and of geometry and numbers at the edge of what
// can be computed with. The same state of the generator gives the same model on every platform.

#include "model/truss/truss.hpp"
#include "support/random.hpp"

namespace gusset::support {

// A truss of some family, dressed: names, units, settings of the class and of checks, properties,
// strains, loads of every kind, cases, combinations, moving loads. Mostly valid; now and then with
// geometry bent to the edge (flat, far, close, large, small), wild numbers, or parts lost and
// doubled.
[[nodiscard]] Truss grownModel(Random&);

// The parts of it, each for tests of their own.
[[nodiscard]] Truss skeleton(Random&);
void dress(Truss&, Random&);
void bendGeometry(Truss&, Random&);
void loseParts(Truss&, Random&);

} // namespace gusset::support
