#pragma once
// Which redundants a person would take, so that what is left is a plain truss with short numbers.
// Private to hand/.

#include "hand/virtual_work/force_method.hpp"

namespace gusset {

// Sets of releases, each of which leaves a determinate truss; what a person would think of first
// stands first. At most `most` sets. Precondition: the structure is stable, with `degree`
// redundants and 1 ≤ degree ≤ kMostRedundants.
[[nodiscard]] std::vector<std::vector<Release>> releasesOf(const Truss&, const Structure&,
                                                           std::size_t most);

// The truss without them, unloaded: cut members left out, rollers taken away, pins that slide
// turned into rollers.
[[nodiscard]] Truss releasedTruss(const Truss&, const Structure&, const std::vector<Release>&);

} // namespace gusset
