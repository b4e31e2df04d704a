#pragma once
// Every part into which a truss can be cut, found the plain way: by a look at all joints for each
// line and each group. To hold against what hand/paper/cuts finds.

#include "hand/paper/cuts.hpp"

#include <set>

namespace gusset::support {

// With what they leave over; neither empty nor the whole.
using Parts = std::set<TrussPart>;

// By straight cuts, at hinges, and around stiff groups, as straightCuts tells.
[[nodiscard]] Parts everyStraightPart(const Sheet&);
// By straight cuts that bend around one joint.
[[nodiscard]] Parts everyBentPart(const Sheet&);

} // namespace gusset::support
