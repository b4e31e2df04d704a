#pragma once
// The force method in words, formulas and tables.

#include "hand/virtual_work/force_method.hpp"
#include "report/derivation/passage.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

// From the count to the check; or why there is none, in one passage. The truss and the choice of
// loads are those that the method was made of.
[[nodiscard]] std::vector<Passage> forceMethodPassages(const Writer&, const ForceMethod&);

} // namespace gusset
