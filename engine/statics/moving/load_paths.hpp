#pragma once
// Paths that a load can travel, found in the drawing: each goes from joint to adjacent joint,
// always to the right (see faultOfPath in model/validate/path_faults).

#include "core/outcome.hpp"
#include "model/truss/truss.hpp"

#include <vector>

namespace gusset {

// Of all chains of connected joints from a leftmost joint of the truss to a rightmost one, the one
// with the least, or the greatest, area under it: a bottom or a top chord with its end posts. Empty
// when no chain leads across. Precondition: validate found no error.
[[nodiscard]] std::vector<JointId> lowestPath(const Truss&);
[[nodiscard]] std::vector<JointId> highestPath(const Truss&);

// From left to right, and from the bottom up where two have the same x.
[[nodiscard]] std::vector<JointId> fromLeft(const Truss&, std::vector<JointId>);

// The picked joints from left to right, with the joints between two of them that members connect in
// a straight line. Issues when there are fewer than two, when one is directly above another, or
// when there are no such members.
[[nodiscard]] Outcome<std::vector<JointId>> pathThrough(const Truss&, std::vector<JointId> picked);

} // namespace gusset
