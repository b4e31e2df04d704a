#pragma once
// What meets at each joint and when each force was found, read once from a working, so that a free
// body can be drawn without going through the whole of a large truss.

#include "hand/paper/working.hpp"

#include <string>
#include <vector>

namespace gusset {

struct WorkingIndex {
    struct Finding {
        std::size_t step = 0;
        double value = 0; // force units
        int drawn = 1;    // as Found::drawn
    };
    bool made = false;
    std::vector<std::vector<Finding>> ofMember{}; // in the order of the steps
    std::vector<std::vector<Finding>> ofRestraint{};
    std::vector<std::vector<MemberId>> membersAt{}; // for each joint
    std::vector<std::vector<RestraintId>> restraintsAt{};
    double largestLoad = 0; // force units
    std::string load = "P"; // the letter of loads: W where P is a joint's label
};
[[nodiscard]] WorkingIndex workingIndexOf(const Truss&, const Working&);

} // namespace gusset
