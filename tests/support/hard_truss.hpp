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

//  T0--T1--T2--T3   1 m × 1 µm each bay, both diagonals, pins at B0 and B3: statically
//  indeterminate. Every | X | X | X |    second member has an E 10¹⁰ times that of steel and more:
//  no figure of its forces is left. B0--B1--B2--B3
[[nodiscard]] Truss refusedStrip();

} // namespace gusset::support
