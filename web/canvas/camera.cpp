#include "canvas/camera.hpp"

#include <cassert>

namespace gusset {

Vec2 worldToScreen(const Camera& camera, Vec2 world) {
    const Vec2 fromCentre = camera.pixelsPerMetre * (world - camera.centre);
    return 0.5 * camera.viewport + Vec2{fromCentre.x, -fromCentre.y};
}

Vec2 screenToWorld(const Camera& camera, Vec2 screen) {
    const Vec2 fromCentre = screen - 0.5 * camera.viewport;
    return camera.centre + (1 / camera.pixelsPerMetre) * Vec2{fromCentre.x, -fromCentre.y};
}

Camera zoomedAbout(const Camera& camera, Vec2 screen, double factor) {
    assert(factor > 0);
    Camera zoomed = camera;
    zoomed.pixelsPerMetre *= factor;
    zoomed.centre = camera.centre + screenToWorld(camera, screen) - screenToWorld(zoomed, screen);
    return zoomed;
}

} // namespace gusset
