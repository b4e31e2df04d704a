#pragma once
// The equations of a part in a student's own numbers. Private to classroom/marking.

#include "classroom/marking/follow.hpp"

namespace gusset {

// Of the sums along x and y and about supports, those that the values do not satisfy and that hold
// one of these answers; the answer that each is solved for is the first of them that it holds. A
// sum with a value missing is left out. Values by the number of the unknown.
[[nodiscard]] std::vector<OwnEquation> brokenSums(const SheetBasis&, const PartOfTruss&,
                                                  const std::vector<std::optional<double>>& values,
                                                  const std::vector<int>& answers, const Rounding&);

} // namespace gusset
