#pragma once
// Free bodies to complete: a joint with the members that meet there, cut, and without any force.

#include "report/sketch/sketch.hpp"
#include "report/text/writer.hpp"

#include <vector>

namespace gusset {

// Of each joint; nothing of a truss that has too many of them to be printed.
[[nodiscard]] std::vector<Sketch> jointStubs(const Writer&);

} // namespace gusset
