#pragma once
// In what the loads of two trusses differ, in words. Private to workshop.

#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

// As differences; `joints` are matchedJoints.
[[nodiscard]] std::vector<std::string> loadDifferences(const Writer&, const Truss& second,
                                                       const std::vector<JointId>& joints);

} // namespace gusset
