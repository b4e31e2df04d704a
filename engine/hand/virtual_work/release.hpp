#pragma once
// Which redundants a person would choose, so that the released truss is simple and has short
// numbers. Private to hand/.

#include "hand/virtual_work/force_method.hpp"

namespace gusset {

// Sets of releases, each of which leaves a statically determinate truss, in the order in which a
// person would think of them. At most `most` sets. Precondition: the structure is stable, with
// `degree` redundants and 1 ≤ degree ≤ kMostRedundants.
[[nodiscard]] std::vector<std::vector<Release>> releasesOf(const Truss&, const Structure&,
                                                           std::size_t most);

// The truss without them, unloaded: cut members left out, rollers removed, sliding pins turned into
// rollers.
[[nodiscard]] Truss releasedTruss(const Truss&, const Structure&, const std::vector<Release>&);

} // namespace gusset
