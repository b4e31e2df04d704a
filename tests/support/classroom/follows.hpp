#pragma once
// Whether a value that is said to follow from a student's own earlier values does so. Nothing here
// asks marking how it found it.

#include "support/classroom/worked_sheet.hpp"

#include <vector>

namespace gusset::support {

// Of those told that they follow, the ones that no equation gives: one of the body that is named,
// in which all else is the student's own, and was there before: what follows is taken in an order
// in which it can have been found. A value that was only miswritten may have been worked with as it
// was meant.
[[nodiscard]] std::vector<MemberOrRestraint> followWithoutEquation(const Asked&, const Marking&);
[[nodiscard]] int toldToFollow(const Marking&);

} // namespace gusset::support
