#pragma once
// Free bodies to complete: a joint with the members that meet there, cut, its loads and its
// support, and without any force that is to be found.

#include "report/sketch/sketch.hpp"
#include "report/text/writer.hpp"
#include "statics/equilibrium/structure.hpp"

#include <vector>

namespace gusset {

// Of each joint; nothing of a truss that has too many of them to be printed.
[[nodiscard]] std::vector<Sketch> jointStubs(const Writer&, const LoadChoice&);

} // namespace gusset
