#pragma once
// What is doubtful about a truss that was drawn as lines: crossings, gaps, short and doubled
// members, parts that hang apart. Private to exchange/drawings.

#include "exchange/drawings/some_of_each.hpp"
#include "model/truss/truss.hpp"

namespace gusset {

// `tolerance` in the truss's length units, > 0: what "nearly" is measured by.
void tellDoubts(const Truss&, double tolerance, SomeOfEach&);

} // namespace gusset
