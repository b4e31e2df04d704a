#pragma once
// What must hold for every drawing, tested by geometry of its own.

#include "canvas/camera.hpp"
#include "canvas/scene.hpp"
#include "model/truss.hpp"

#include <string>
#include <vector>

namespace gusset::support {

// Names of the pairs that overlap: label and label, label and member, label and joint.
[[nodiscard]] std::vector<std::string> overlapsIn(const Scene&, const Truss&);

} // namespace gusset::support
