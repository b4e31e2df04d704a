#pragma once
// What a figure of the whole truss shows besides its members and forces: supports, and the force in
// each member written beside it. Private to report/.

#include "hand/polygon/force_polygon.hpp"
#include "report/derivation/body_draft.hpp"

#include <vector>

namespace gusset {

void drawSupports(Draft&); // once the members are drawn
// The letters of a polygon's spaces, to be placed before all that waits: they must stay in their
// spaces, and the labels of forces may give way. `scale`: px per length unit.
void letterSpaces(Draft&, const ForcePolygon&, double scale);
[[nodiscard]] SketchInk inkOfForce(double force);
[[nodiscard]] RichLine forceOfMember(const Notation&, double force); // "16.67 C"
// The line in the sketch gets the force's ink, and the words stand beside it. Precondition: the
// sketch has the lines of members first, in this order.
void writeBeside(Draft&, std::size_t line, SketchInk, RichLine words);

} // namespace gusset
