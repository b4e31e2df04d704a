#pragma once
// What the page that chooses profiles asks of the program: one request in, one answer out, both
// JSON, as at the desk (desk/desk.hpp).
//
// - open { model }: title, model, figure, members, the places of the joints; the groups of members
//   by role; what there is to choose from: kinds of profiles with their sources, grades; whether
//   its own weight is among its loads ("weighs"), and the cases that it may be added to; in what
//   to tell of masses and movements ("measures": units, and how many are a kilogram and a metre);
//   whether it is as its outline makes it, and then rise and panels
// - trace { drawing, unit (or empty, as the drawing says), width (in it, 0: as drawn) }: the same,
//   for the truss of a drawing (DXF, SVG) or a table (CSV), with "notes" on what is doubtful
// - lines { model, as: "dxf" or "csv" }: "text", the centre lines or the table
// - size { model, grade, deflection (x of L/x, 0: none), kinds, own (a list as CSV, or empty),
//   groups (by role if there are none), weight (the case that the own weight of the members is
//   added to; none: as the truss has it), standard (en-a0 to en-d, aisc-lrfd, aisc-asd; else the
//   truss's own) }: the profiles of each group, in words and figures; the model with them, as text
//   and as a link
// - move { model, joint (its name), x, y (its units) }: the truss with this joint there, as open
//   answers
// - compare { model, other (a model or a link) }: two figures with their scales (px per length
//   unit), the members of each that the other has not or has otherwise ("marked", by number),
//   figures of both as rows of texts ("first", "second", "more": how much the second has more), the
//   differences in sentences ("lines"), what is missing ("remarks"), and a link to the other
// - reshape { model, rise, panels }: the same truss with these, as open answers
// - vary { as size, and what: "rise" or "panels", from, to, count }: for each value the mass, the
//   greatest use and the deflection with the lightest profiles
//
// Reshape and vary want a truss as its outline makes it.
// What is wrong stands in "faults", a list of sentences, and nothing else is then answered.

#include "core/phrase.hpp"

#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] std::string workshopReply(const PhraseBook&, std::string_view request);

} // namespace gusset
