#pragma once
// In what two trusses differ, in words. Private to workshop.

#include "report/text/writer.hpp"
#include "workshop/matched.hpp"

#include <string>
#include <vector>

namespace gusset {

// A sentence for each difference, none if there are none; titles and class settings are not
// compared. Precondition: both are in the same units. The writer's truss is the first.
[[nodiscard]] std::vector<std::string> differences(const Writer&, const Truss& second,
                                                   const Matched&);

} // namespace gusset
