#pragma once
// Whether what a working says about sums across a line, forces moved along their lines, equations
// solved together and walks with letters is true of its truss: derived from joints, members,
// supports and loads, not from what the engine thought.

#include "hand/paper/working.hpp"

#include <string>

namespace gusset::support {

struct SolvingCounts {
    int across = 0;
    int turned = 0;
    int moved = 0;
    int substituted = 0;
    int eliminated = 0;
    int equal = 0;
    int walks = 0;
    int walkedJoints = 0;
};
// The first sentence that is false, or empty.
[[nodiscard]] std::string falseSolving(const Truss&, const Working&, SolvingCounts&);

} // namespace gusset::support
