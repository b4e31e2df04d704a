#pragma once
// What must hold for every drawing, checked with independent geometry.

#include "app/board.hpp"
#include "app/state/camera.hpp"
#include "canvas/scene/scene.hpp"
#include "model/truss/truss.hpp"

#include <string>
#include <vector>

namespace gusset::support {

// The truss on the board of a page of this size, CSS px.
[[nodiscard]] Board boardOn(const Truss&, Vec2 page);

// Names of the pairs that overlap: label and label, label and member, label and joint.
[[nodiscard]] std::vector<std::string> overlapsIn(const Scene&, const Truss&);

} // namespace gusset::support
