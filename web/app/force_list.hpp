#pragma once
// The table of member forces as its reader wants it: which members, in which order.

#include "app/derived.hpp"
#include "app/state.hpp"

#include <vector>

namespace gusset {

// Places in Derived::forces.
[[nodiscard]] std::vector<int> listedForces(const AppState&, const Derived&);
// The member with the largest tension and the one with the largest compression, where there are
// such; of equal ones the first.
[[nodiscard]] std::vector<MemberId> largestForces(const Solution&);

} // namespace gusset
