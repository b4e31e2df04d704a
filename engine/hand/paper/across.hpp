#pragma once
// Sums of forces across a line, along the direction n at right angles to it: the angles in them,
// and the sentences that say where these come from. Private to hand/.

#include "hand/paper/body.hpp"

namespace gusset {

// The index of the angle of an inclined force; -1 for a horizontal or vertical one.
[[nodiscard]] int angleOf(const Sheet&, const Symbol&);
// The slope of the line that n stands on; null if it has no letter, as it is horizontal or vertical
// but for a trace.
[[nodiscard]] const AngleLine* lineAcross(const Sheet&, Vec2 n);
// The angle between an inclined force and that line. Precondition: the line has a letter.
[[nodiscard]] TurnedAngle angleWith(const Sheet&, const Acting&, Vec2 n);
// What turns a force along a line into its part along an axis (SumX or SumY), as the class writes
// it.
[[nodiscard]] Factor partAlong(const Sheet&, const AngleLine&, EquationKind axis);
// Whether the class writes components along n by the parts along the axes: with slopes, direction
// cosines or exact numbers. Otherwise by sines of angles in degrees.
[[nodiscard]] bool turnsInProducts(const Sheet&);

// Why the sum along n, which leaves one unknown, and what the other factors in it are.
[[nodiscard]] std::vector<Remark> remarksAcross(const Sheet&, const Body&, const Symbol& left,
                                                Vec2 n);

} // namespace gusset
