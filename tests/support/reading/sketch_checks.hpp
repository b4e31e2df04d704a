#pragma once
// What must be true of every sketch: words clear of each other and of what is drawn, and everything
// inside its size.

#include "report/sketch/sketch.hpp"

#include <string>

namespace gusset::support {

// The first fault in words, or empty.
[[nodiscard]] std::string faultOfSketch(const Sketch&);

} // namespace gusset::support
