#pragma once
// The steps of a section, whoever chose it. Private to hand/.

#include "hand/isolate.hpp"

namespace gusset {

[[nodiscard]] std::vector<MemberId> cutMembers(const Sheet&, const std::vector<JointId>& part);
// How far from what is done first by hand: 0 a sum or moments about a joint, 1 a sum across
// parallel lines, 2 moments about a point off the truss.
[[nodiscard]] int difficulty(const Isolation&);

// Cuts the truss and looks at the body; `why` stands before that.
void writeCut(Sheet&, const Body&, const std::vector<Remark>& why);
void writeSectionEquation(Sheet&, const Body&, Isolation);

} // namespace gusset
