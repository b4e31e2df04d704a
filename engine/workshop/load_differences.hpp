#pragma once
// In what the loads of two trusses differ, in words. Private to workshop.

#include "report/text/writer.hpp"
#include "workshop/matched.hpp"

#include <string>
#include <vector>

namespace gusset {

// As differences.
[[nodiscard]] std::vector<std::string> loadDifferences(const Writer&, const Truss& second,
                                                       const Matched&);

} // namespace gusset
