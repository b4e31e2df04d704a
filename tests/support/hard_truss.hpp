#pragma once
// Small trusses that are hard on arithmetic in one way each.

#include "model/truss/truss.hpp"

namespace gusset::support {

// One section of steel, 1000 mm², for all members.
void giveSections(Truss&);

//      C      two bars on pins 2 m apart, C only `rise` above the line of A and B: a load of 1 down
//  A ----- B  at C causes 1/2·√(1 + rise²)/rise in each; no load
[[nodiscard]] Truss flatArch(double rise);
// The same with a third bar, from C to a pin at G, 2 m to the left of A: statically indeterminate.
[[nodiscard]] Truss thriceHeldArch(double rise);

//  D---C    4 m × 3 m, both diagonals, one section for all; no load
//  | X |
//  A---B    pin at A; what holds B is for the test to say
[[nodiscard]] Truss crossedSquare();

} // namespace gusset::support
