#pragma once
// The steps of a section, however it was chosen. Private to hand/.

#include "hand/paper/isolate.hpp"

#include <compare>

namespace gusset {

[[nodiscard]] std::vector<MemberId> cutMembers(const Sheet&, const std::vector<JointId>& part);
// How far it is from what one would try first by hand: 0 a sum or moments about a joint, 1 a sum
// across parallel lines, 2 moments about a point off the truss.
[[nodiscard]] int difficulty(WayKind);

// One side of a division, with its number of unknowns.
struct PartOfCut {
    const Divisions& cuts;
    std::size_t division;
    int side;
    std::size_t unknowns;
};
// The effort of a part's equation; smaller is better: less to look for, less to write.
struct Effort {
    int difficulty;
    bool manyUnknowns;
    std::size_t terms;
    std::size_t unknowns;
    std::size_t joints;

    friend auto operator<=>(const Effort&, const Effort&) = default;
};
[[nodiscard]] Effort effortOf(const PartOfCut&, const Way&);
// Breaks ties of effort, by joints.
[[nodiscard]] bool comesBefore(const PartOfCut&, const PartOfCut&);

// Cuts the truss and introduces the body; `why` comes before that.
void writeCut(Sheet&, const Body&, const std::vector<Remark>& why);
void writeSectionEquation(Sheet&, const Body&, Isolation);
void writeReactionEquation(Sheet&, const Body&, Isolation); // of the whole truss

// For one member's force: the part to consider, and its equation.
struct SectionChoice {
    Body body;
    Isolation isolation;
};
// The section with the least to write, if there is one. Precondition: the reactions are known.
[[nodiscard]] std::optional<SectionChoice> bestSection(const Sheet&, const Symbol&);

} // namespace gusset
