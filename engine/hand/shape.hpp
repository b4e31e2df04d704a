#pragma once
// What follows from the joints and members of a truss alone, whatever acts on it and whatever is
// known of its forces: found when it is first asked for, and shared by all sheets of one truss.
// Private to hand/.

#include "hand/cuts.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct Shape {
    std::optional<std::vector<HingedPart>> hinged;
    std::optional<Divisions> straight;
    std::optional<Divisions> bent;
    std::vector<std::optional<std::vector<JointId>>> onLine; // of each member, in their order
};

} // namespace gusset
