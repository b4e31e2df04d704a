#pragma once
// From the plane of the truss (length units, y up) to the board (CSS pixels from its top left, y
// down) and back. A plain value; the renderer multiplies by the pixel ratio.

#include "core/vec2.hpp"
#include "model/truss/truss.hpp"

namespace gusset {

struct Camera {
    Vec2 centre;            // world point in the middle of the free part of the board
    double scale = 60;      // CSS px per length unit
    Vec2 size{1366, 768};   // CSS px of the whole board
    double coverRight = 0;  // CSS px hidden by the notebook on the right
    double coverBottom = 0; // and by the sheet and the tools at the bottom
    double coverTop = 0;

    friend bool operator==(const Camera&, const Camera&) = default;
};

[[nodiscard]] Vec2 toPixel(const Camera&, Vec2 world);
[[nodiscard]] Vec2 toWorld(const Camera&, Vec2 pixel);
// `factor` > 1 zooms in; the world point under `pixel` stays under it. The scale is kept within
// sane bounds.
[[nodiscard]] Camera zoomAbout(const Camera&, Vec2 pixel, double factor);
[[nodiscard]] Camera panBy(const Camera&, Vec2 pixels);
// Two fingers: the world points under both stay under both (pan and zoom, no rotation).
[[nodiscard]] Camera pinch(const Camera&, Vec2 fromA, Vec2 fromB, Vec2 toA, Vec2 toB);
// Centres the box in the free part, with room for labels around it.
[[nodiscard]] Camera fitTo(const Camera&, const Extent&);
// What fitTo should show of a truss: the box around its joints, or a starting sheet if there are
// none.
[[nodiscard]] Extent boardExtent(const Truss&);
// 1, 2 or 5 times a power of ten, such that grid lines are at least about 24 px apart.
[[nodiscard]] double gridStepFor(const Camera&);

} // namespace gusset
