#include "canvas/camera.hpp"

#include <cassert>

namespace gusset {

namespace {

// The middle of what the notebook and the tools leave free.
Vec2 freeMiddle(const Camera& camera) {
    return {(camera.size.x - camera.coverRight) / 2,
            (camera.size.y - camera.coverBottom + camera.coverTop) / 2};
}

} // namespace

Vec2 toPixel(const Camera& camera, Vec2 world) {
    const Vec2 fromCentre = camera.scale * (world - camera.centre);
    return freeMiddle(camera) + Vec2{fromCentre.x, -fromCentre.y};
}

Vec2 toWorld(const Camera& camera, Vec2 pixel) {
    const Vec2 fromCentre = pixel - freeMiddle(camera);
    return camera.centre + (1 / camera.scale) * Vec2{fromCentre.x, -fromCentre.y};
}

Camera zoomAbout(const Camera& camera, Vec2 pixel, double factor) {
    assert(factor > 0);
    Camera zoomed = camera;
    zoomed.scale *= factor;
    zoomed.centre = camera.centre + toWorld(camera, pixel) - toWorld(zoomed, pixel);
    return zoomed;
}

} // namespace gusset
