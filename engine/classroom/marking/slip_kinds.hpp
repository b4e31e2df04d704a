#pragma once
// Which single slip gives what a student wrote, on a part of the truss. Private to
// classroom/marking.

#include "classroom/marking/carried.hpp"
#include "classroom/marking/marking.hpp"

namespace gusset {

// The kinds that give all written values within rounding, each once.
[[nodiscard]] std::vector<SlipKind> slipsThatFit(const Structure&, const PartOfTruss&,
                                                 const OwnValues&, const Rounding&,
                                                 const WrittenHere&);
} // namespace gusset
