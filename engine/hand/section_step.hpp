#pragma once
// The steps of a section, whoever chose it. Private to hand/.

#include "hand/isolate.hpp"

namespace gusset {

[[nodiscard]] std::vector<MemberId> cutMembers(const Sheet&, const std::vector<JointId>& part);
// How far from what is done first by hand: 0 a sum or moments about a joint, 1 a sum across
// parallel lines, 2 moments about a point off the truss.
[[nodiscard]] int difficulty(RemarkKind why);

// Cuts the truss and looks at the body; `why` stands before that.
void writeCut(Sheet&, const Body&, const std::vector<Remark>& why);
void writeSectionEquation(Sheet&, const Body&, Isolation);
void writeReactionEquation(Sheet&, const Body&, Isolation); // of the whole truss

// For one member's force: the part to look at, and its equation.
struct SectionChoice {
    Body body;
    Isolation isolation;
};
// The section with least to write, if any gives it. Precondition: the reactions are known.
[[nodiscard]] std::optional<SectionChoice> bestSection(const Sheet&, const Symbol&);

} // namespace gusset
