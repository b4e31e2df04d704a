#pragma once
// Which members and reactions a truss could do without, one for each degree of indeterminacy.
// Elimination leaves their columns free; the state of self-stress of each tells what shares its
// force (Pellegrino & Calladine 1986).

#include "statics/equilibrium.hpp"

namespace gusset {

// At most kRedundantsShown.
[[nodiscard]] std::vector<Redundant> redundantsOf(const Structure&, const Equilibrium&);

} // namespace gusset
