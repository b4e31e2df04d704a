#pragma once
// An influence line by hand, in words, formulas and a table.

#include "hand/virtual_work/influence_by_hand.hpp"
#include "report/derivation/passage.hpp"
#include "report/text/writer.hpp"

#include <vector>

namespace gusset {

// What moves, what holds for every position of the load, each position, the ordinates, the shape;
// or one passage saying why there is no such line. The effect is the one that the line was built
// for.
[[nodiscard]] std::vector<Passage> influencePassages(const Writer&, const InfluenceByHand&,
                                                     SketchPaper = SketchPaper::Page);

} // namespace gusset
