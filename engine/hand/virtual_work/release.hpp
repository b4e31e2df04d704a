#pragma once
// Which redundants a person would choose, so that the released truss is simple and has short
// numbers. Private to hand/.

#include "hand/virtual_work/force_method.hpp"
#include "hand/virtual_work/virtual_work.hpp"

namespace gusset {

// Sets of releases, each of which leaves a statically determinate truss, in the order in which a
// person would think of them. At most `most` sets. Precondition: the structure is stable, with
// `degree` redundants and 1 ≤ degree ≤ kMostRedundants.
[[nodiscard]] std::vector<std::vector<Release>> releasesOf(const Truss&, const Structure&,
                                                           std::size_t most);

// The truss without them, unloaded: cut members left out, rollers removed, sliding pins turned into
// rollers.
[[nodiscard]] Truss releasedTruss(const Truss&, const Structure&, const std::vector<Release>&);

// The forces of a released truss as those of the whole: a released member or reaction carries 1 if
// it is `own`, else 0.
[[nodiscard]] FoundForces forcesOfWhole(const Structure& whole, const std::vector<Release>&,
                                        const FoundForces& released, const Release* own);

} // namespace gusset
