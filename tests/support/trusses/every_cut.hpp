#pragma once
// Every part into which a truss can be cut, found by brute force: all joints are examined for each
// line and each group. To be compared with what hand/paper/cuts finds.

#include "hand/paper/cuts.hpp"

#include <set>

namespace gusset::support {

// Each with its complement; neither is empty or the whole.
using Parts = std::set<TrussPart>;

// By straight cuts, at hinges, and around stiff groups, as straightCuts does.
[[nodiscard]] Parts everyStraightPart(const Sheet&);
// By straight cuts that bend around one joint.
[[nodiscard]] Parts everyBentPart(const Sheet&);

} // namespace gusset::support
