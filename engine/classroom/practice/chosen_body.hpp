#pragma once
// The free body that a student chooses: a joint, the whole truss, or a part that a cut leaves.

#include "classroom/exercise/written_equation.hpp"
#include "classroom/marking/free_bodies.hpp"

#include <optional>
#include <vector>

namespace gusset {

enum class CutFault {
    None,
    NothingCut,
    StillOne, // the truss hangs together
    TooMany,  // it falls into more than two parts
    Idle,     // a member is cut whose ends are in the same part
};
struct CutTruss {
    CutFault fault = CutFault::None;
    std::optional<MemberId> idle{};
    std::vector<std::vector<JointId>> parts{}; // as connected by members; that of joint 0 first
};
[[nodiscard]] CutTruss cutThrough(const Structure&, const std::vector<MemberId>&);

// Its joints, in order; nothing if its cut does not part the truss in two.
[[nodiscard]] std::optional<std::vector<JointId>> jointsOf(const Structure&, const ChosenBody&);

// The forces on a body as a student draws them: a load by its components along the axes.
[[nodiscard]] PartOfTruss drawnPart(const Structure&, const std::vector<Vec2>& loads,
                                    const std::vector<JointId>&);

} // namespace gusset
