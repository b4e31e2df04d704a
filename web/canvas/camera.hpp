#pragma once

#include "core/vec2.hpp"

namespace gusset {

// How the board maps to the screen. World: metres, y up. Screen: pixels, y down.
struct Camera {
    Vec2 centre;               // world point in the middle of the view, m
    Vec2 viewport;             // size of the view, pixels
    double pixelsPerMetre = 1; // > 0
};

[[nodiscard]] Vec2 worldToScreen(const Camera& camera, Vec2 world);
[[nodiscard]] Vec2 screenToWorld(const Camera& camera, Vec2 screen);

// The camera zoomed by `factor` (> 0) so that the world point under `screen` stays under it.
[[nodiscard]] Camera zoomedAbout(const Camera& camera, Vec2 screen, double factor);

} // namespace gusset
