#pragma once
// How loads that act between joints, and self-weight, come to the joints, as a person shares them
// out before the working begins.

#include "core/ids.hpp"
#include "core/vec2.hpp"
#include "statics/equilibrium/structure.hpp"

#include <vector>

namespace gusset {

struct JointShare {
    JointId joint{};
    // Of a load along a chord: the horizontal length that the joint carries, length units. Of a
    // load on a member: the distance of the load from the other joint, length units. 0 for
    // self-weight.
    double length = 0;
    std::vector<MemberId> members{}; // of self-weight: those that meet at the joint
    Vec2 force{};                    // force units, times the load's factor
};
struct LoadShares {
    LoadId load{};
    double factor = 1; // of its case in the combination
    double span = 0;   // of the member under a load on one, length units
    std::vector<JointShare> joints{};
};

// One entry for each load of the choice that does not act on a joint. Their forces add up, with the
// loads on joints, to jointLoads (statics/equilibrium/structure).
[[nodiscard]] std::vector<LoadShares> loadShares(const Truss&, const Structure&, const LoadChoice&);

} // namespace gusset
