#pragma once
// The whole working of the forces of any truss.

#include "report/derivation/passage.hpp"
#include "report/text/writer.hpp"
#include "statics/solve/solution.hpp"

#include <vector>

namespace gusset {

// By equilibrium, or by the force method where that is not enough. Precondition: the solution is
// solved, and under these loads.
[[nodiscard]] std::vector<Passage> passagesOfForces(const Writer&, const LoadChoice&,
                                                    const Solution&);

} // namespace gusset
