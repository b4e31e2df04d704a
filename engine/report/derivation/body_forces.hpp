#pragma once
// The forces on a free body at a step of the working, as its equations use them: unknown forces in
// the sense in which they are drawn, known forces with their values, loads by their components.

#include "report/formula/notation.hpp"
#include "report/sketch/sketch.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct BodyForce {
    JointId at;   // a joint of the body
    Vec2 along{}; // unit vector in the plane of the truss, in the direction of the arrow
    std::optional<MemberOrRestraint> of{}; // the cut member, or the reaction; none: a load
    Vec2 out{};                            // for a cut member, the unit vector out of the body
    SketchInk ink = SketchInk::Plain;
    RichLine label{};     // F_AB, "A_y = 36 kN", "24 kN"
    int thing = kNoThing; // of its arrow and its label
};
[[nodiscard]] bool isCutMember(const BodyForce&);
struct FreeBody {
    std::vector<JointId> joints;
    std::vector<BodyForce> forces; // members, reactions, loads; not those known to be zero
};

// The free bodies that a step of the working introduces: usually one, several where joints are
// taken together, none where the step continues with an earlier one. `step` indexes working.steps.
[[nodiscard]] std::vector<FreeBody> freeBodiesOf(const Notation&, std::size_t step);
// The whole truss with every force that the working finds.
[[nodiscard]] FreeBody wholeFreeBody(const Notation&);
// The whole truss with its loads alone.
[[nodiscard]] FreeBody loadedBody(const Notation&);
// The whole truss with its loads and these reactions (force units, in the order of the restraints),
// drawn as they act.
[[nodiscard]] FreeBody finalFreeBody(const Notation&, const std::vector<double>& reactions);
// "Free body of joint A: F_AB, drawn to the right, and …"
[[nodiscard]] std::string sentenceOf(const Notation&, const FreeBody&);

} // namespace gusset
