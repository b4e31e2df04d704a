#pragma once
// What acts on a free body at a step of the working, as its equations take it: unknown forces in
// the sense in which they are drawn, known ones with their values, loads by their components.

#include "report/formula/notation.hpp"
#include "report/sketch/sketch.hpp"

#include <vector>

namespace gusset {

struct BodyForce {
    JointId at;         // a joint of the body
    Vec2 along{};       // unit vector in the plane of the truss: the way the arrow points
    MemberId member{};  // of a cut member: which
    int restraint = -1; // of a reaction: index in Structure::restraints
    Vec2 out{};         // of a cut member: unit vector out of the body
    SketchInk ink = SketchInk::Plain;
    RichLine label{}; // F_AB, "A_y = 36 kN", "24 kN"
};
struct FreeBody {
    std::vector<JointId> joints;
    std::vector<BodyForce> forces; // members, reactions, loads; without those known to be zero
};

// The bodies that a step of the working looks at for the first time: one, several where joints are
// taken together, none where the step goes on with an earlier one. `step` indexes working.steps.
[[nodiscard]] std::vector<FreeBody> freeBodiesOf(const Notation&, std::size_t step);
// The whole with all that the working finds.
[[nodiscard]] FreeBody wholeFreeBody(const Notation&);
// "Free body of joint A: F_AB, drawn to the right, and …"
[[nodiscard]] std::string sentenceOf(const Notation&, const FreeBody&);

} // namespace gusset
