#pragma once
// The moment centre of a section where it lies off the truss, which has to be drawn for its lever
// arms to be seen.

#include "hand/paper/working.hpp"
#include "report/derivation/body_draft.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

struct MomentCentre {
    std::string name;
    Vec2 at;                       // length units
    std::vector<MemberId> through; // whose lines meet there
    std::vector<double> arms;      // of the unknown force in the equation, length units
};
// Which one is drawn on the free body that a step shows. That of a section shows the only one that
// its equations take; where they take several, each such equation shows the body again.
[[nodiscard]] std::optional<MomentCentre> centreOnBody(const Working&, std::size_t step);
[[nodiscard]] bool showsBodyAgain(const Working&, std::size_t step);
// The far ends of cut members at which the equation takes their forces, as their arms say.
[[nodiscard]] std::vector<JointId> jointsTakenBeyond(const Notation&, const FreeBody&,
                                                     const MomentCentre&);
// Whether it can be drawn in its place without the body becoming small.
[[nodiscard]] bool isWithinReach(const Notation&, const FreeBody&, const MomentCentre&);
// A cross with its letter, the lines that meet there, and its place among the dimensions; at the
// edge if it is out of reach. `scale`: px per length unit.
void drawCentre(Draft&, const MomentCentre&, double scale);

} // namespace gusset
