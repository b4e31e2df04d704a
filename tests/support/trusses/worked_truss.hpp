#pragma once
// The trusses whose working is kept as reviewed text in tests/data/working.

#include "model/truss/truss.hpp"
#include "statics/moving/influence.hpp"

#include <string>
#include <vector>

namespace gusset::support {

struct WorkedTruss {
    std::string file; // in tests/data/working, without its extension
    Truss truss;
};
[[nodiscard]] std::vector<WorkedTruss> workedTrusses();
// Statically indeterminate, for the force method.
[[nodiscard]] std::vector<WorkedTruss> redundantTrusses();

struct InfluenceTruss {
    std::string file;
    Truss truss;
    std::vector<JointId> path;
    Effect effect;
};
[[nodiscard]] std::vector<InfluenceTruss> influenceTrusses();

} // namespace gusset::support
