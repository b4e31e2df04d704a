#pragma once
// What the page that chooses profiles asks of the program: one request in, one answer out, both
// JSON, as at the desk (desk/desk.hpp).
//
// - open { model }: title, figure, members; the groups of members by role; what there is to choose
//   from: kinds of profiles with their sources, grades
// - size { model, grade, deflection (x of L/x, 0: none), kinds, own (a list as CSV, or empty) }:
// the
//   profiles of each group, in words and figures; the model with them, as text and as a link
// - vary { …the same, what: "rise" or "panels", from, to, count }: for each value the mass, the
//   greatest use and the deflection with the lightest profiles. The model must be as its outline
//   makes it
//
// What is wrong stands in "faults", a list of sentences, and nothing else is then answered.

#include "core/phrase.hpp"

#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] std::string workshopReply(const PhraseBook&, std::string_view request);

} // namespace gusset
