#pragma once
// The steps of a section, whoever chose it. Private to hand/.

#include "hand/paper/isolate.hpp"

#include <compare>

namespace gusset {

[[nodiscard]] std::vector<MemberId> cutMembers(const Sheet&, const std::vector<JointId>& part);
// How far from what is done first by hand: 0 a sum or moments about a joint, 1 a sum across
// parallel lines, 2 moments about a point off the truss.
[[nodiscard]] int difficulty(WayKind);

// One side of a division, with as many unknowns.
struct PartOfCut {
    const Divisions& cuts;
    std::size_t division;
    int side;
    std::size_t unknowns;
};
// Of two equations of parts the one with less effort is better: less to look for, less to write.
struct Effort {
    int difficulty;
    bool manyUnknowns;
    std::size_t terms;
    std::size_t unknowns;
    std::size_t joints;

    friend auto operator<=>(const Effort&, const Effort&) = default;
};
[[nodiscard]] Effort effortOf(const PartOfCut&, const Way&);
// Of parts with equal effort: by their joints.
[[nodiscard]] bool comesBefore(const PartOfCut&, const PartOfCut&);

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
