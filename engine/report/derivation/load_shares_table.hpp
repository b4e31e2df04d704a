#pragma once
// The tables in which loads between joints, and self-weight, are shared out to the joints.

#include "hand/paper/load_shares.hpp"
#include "report/formula/notation.hpp"
#include "report/results/table.hpp"

#include <vector>

namespace gusset {

// One table for each load, and one that adds up where a joint gets more than one.
[[nodiscard]] std::vector<TextTable> loadSharesTables(const Notation&,
                                                      const std::vector<LoadShares>&);

} // namespace gusset
