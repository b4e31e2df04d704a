#pragma once
// Small trusses, each numerically hard in one way.

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

//     C       two bars over 2 m, 1 m above the ground, C higher than A and B by `rise`; 1 kN down
//  A --- B    at C in the case "snow", 1 kN to the right in the case "wind"
//
// At C: 2·F·sin = 1 kN with sin = rise. 1 + rise is a double, which is off by up to 1.1e-16: with a
// rise of 1e-9 that is 1.1e-7 of the rise, and of the forces, so that six figures are left.
[[nodiscard]] Truss archOnStilts(double rise = 1e-9);

//  T0--T1--T2--T3   three panels, both diagonals in each, pins at B0 and B3; no load, no sections
//  | X | X | X |
//  B0--B1--B2--B3
[[nodiscard]] Truss bracedStrip(double length, double height);
// The same with panels of 1 m × 1 µm. Every second member has at least 10¹⁰ times the E of steel:
// none of the digits of its forces is reliable.
[[nodiscard]] Truss refusedStrip();

} // namespace gusset::support
