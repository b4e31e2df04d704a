#pragma once
// An influence line by hand, in words, formulas and a table.

#include "hand/virtual_work/influence_by_hand.hpp"
#include "report/derivation/passage.hpp"
#include "report/text/writer.hpp"

#include <vector>

namespace gusset {

// What moves, what holds for every place, each place, the ordinates, the shape; or why there is no
// such line, in one passage. The effect is that which the line was made of.
[[nodiscard]] std::vector<Passage> influencePassages(const Writer&, const InfluenceByHand&,
                                                     SketchPaper = SketchPaper::Page);

} // namespace gusset
