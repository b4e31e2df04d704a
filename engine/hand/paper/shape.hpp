#pragma once
// What follows from the joints and members of a truss alone, whatever acts on it and whatever is
// known of its forces: found when it is first asked for, and shared by all sheets of one truss.
// Private to hand/.

#include "hand/paper/cuts.hpp"

#include <map>
#include <optional>
#include <vector>

namespace gusset {

// Joints whose equations together settle their unknowns.
struct Together {
    std::vector<JointId> joints;
    std::vector<Symbol> unknowns;
};

struct Shape {
    std::optional<std::vector<HingedPart>> hinged;
    std::optional<Divisions> straight;
    std::optional<Divisions> bent;
    std::vector<std::optional<std::vector<JointId>>> onLine; // of each member, in their order
    // The fewest joints that settle together, if any do, by what was open when that was asked.
    std::map<std::vector<bool>, std::optional<Together>> together;
};

} // namespace gusset
