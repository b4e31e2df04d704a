#pragma once
// The table of member forces as its reader wants it: which members, in which order.

#include "app/derived.hpp"
#include "app/state.hpp"

#include <vector>

namespace gusset {

// Places in Derived::forces.
[[nodiscard]] std::vector<int> listedForces(const AppState&, const Derived&);

} // namespace gusset
