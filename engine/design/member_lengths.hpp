#pragma once
// Lengths over which members can buckle. In the plane of the truss that is the length between the
// joints; out of it, the length between joints that are held out of the plane: it runs on through a
// joint that is not, along the straightest member there, if that turns by no more than 20°.

#include "statics/equilibrium/structure.hpp"

#include <vector>

namespace gusset {

struct MemberLength {
    double in = 0;        // m
    double out = 0;       // m
    double inFactor = 1;  // K
    double outFactor = 1; // K
};

[[nodiscard]] std::vector<MemberLength> lengthsOf(const Truss&, const Structure&); // one per member

} // namespace gusset
