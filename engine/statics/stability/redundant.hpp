#pragma once
// Which members and reactions a truss could do without, one for each degree of indeterminacy.
// Elimination leaves their columns free; the state of self-stress of each shows which members share
// its force (Pellegrino & Calladine 1986).

#include "statics/equilibrium/equilibrium.hpp"

#include <vector>

namespace gusset {

// One of the members or reactions that equilibrium could do without. It may not be the only choice.
struct Redundant {
    MemberOrRestraint what;
    std::vector<MemberId> sharing; // members stressed along with it
};

inline constexpr std::size_t kRedundantsShown = 12; // Counting tells how many there are

// At most kRedundantsShown.
[[nodiscard]] std::vector<Redundant> redundantsOf(const Structure&, const Equilibrium&);

} // namespace gusset
