#include "app/state/camera.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace gusset {

namespace {

// CSS px per length unit. Wide enough for a truss of 1 mm in metres and one of 10 km in
// millimetres; narrow enough that pixels times scale never overflow.
constexpr double kLeastScale = 1e-6;
constexpr double kGreatestScale = 1e8;

constexpr double kGridApart = 24; // CSS px: closer lines would look like a grey tone

Vec2 freeMiddle(const Camera& camera) {
    return {0.5 * (camera.size.x - camera.coverRight),
            0.5 * (camera.coverTop + camera.size.y - camera.coverBottom)};
}

Vec2 freeSize(const Camera& camera) {
    return {std::max(camera.size.x - camera.coverRight, 1.0),
            std::max(camera.size.y - camera.coverTop - camera.coverBottom, 1.0)};
}

double boundedScale(double scale) { return std::clamp(scale, kLeastScale, kGreatestScale); }

// The camera with its centre moved so that `world` appears at `pixel`.
Camera holding(Camera camera, Vec2 world, Vec2 pixel) {
    camera.centre = camera.centre + world - toWorld(camera, pixel);
    return camera;
}

// Px below a truss for a support, a reaction with its figure and a row of dimensions.
constexpr double kLeastBelow = 128;

// The space to keep free around the truss for labels, loads, reactions and dimensions; less on a
// small board, where some of these are left out.
struct Margins {
    double left, right, top, bottom;
};
Margins marginsFor(Vec2 free) {
    constexpr Margins kFull{130, 95, 90, 150};
    constexpr double kMost = 0.6; // of the board; the rest is for the drawing
    const double wide =
        std::min(std::clamp(free.x / 700, 0.4, 1.0), kMost * free.x / (kFull.left + kFull.right));
    const double high =
        std::min(std::clamp(free.y / 600, 0.4, 1.0), kMost * free.y / (kFull.top + kFull.bottom));
    const double below =
        std::clamp(kLeastBelow, high * kFull.bottom,
                   std::max(high * kFull.bottom, kMost * free.y - high * kFull.top));
    return {wide * kFull.left, wide * kFull.right, high * kFull.top, below};
}

// Twelve metres by six, in length units.
Vec2 sheetToBeginOn(LengthUnit unit) {
    const double across = 12 / toMetre(unit);
    return {across, across / 2};
}

} // namespace

Vec2 toPixel(const Camera& camera, Vec2 world) {
    const Vec2 fromCentre = camera.scale * (world - camera.centre);
    return freeMiddle(camera) + Vec2{fromCentre.x, -fromCentre.y};
}

Vec2 toWorld(const Camera& camera, Vec2 pixel) {
    const Vec2 fromCentre = (1 / camera.scale) * (pixel - freeMiddle(camera));
    return camera.centre + Vec2{fromCentre.x, -fromCentre.y};
}

Camera zoomAbout(const Camera& camera, Vec2 pixel, double factor) {
    assert(factor > 0);
    const Vec2 kept = toWorld(camera, pixel);
    Camera zoomed = camera;
    zoomed.scale = boundedScale(camera.scale * factor);
    return holding(zoomed, kept, pixel);
}

Camera panBy(const Camera& camera, Vec2 pixels) {
    Camera panned = camera;
    panned.centre = camera.centre - (1 / camera.scale) * Vec2{pixels.x, -pixels.y};
    return panned;
}

Camera pinch(const Camera& camera, Vec2 fromA, Vec2 fromB, Vec2 toA, Vec2 toB) {
    const double before = length(fromB - fromA);
    const double after = length(toB - toA);
    const Vec2 kept = toWorld(camera, 0.5 * (fromA + fromB));
    Camera moved = camera;
    if (before > 1 && after > 1) { // two fingers at the same point give no ratio
        moved.scale = boundedScale(camera.scale * after / before);
    }
    return holding(moved, kept, 0.5 * (toA + toB));
}

Camera fitTo(const Camera& camera, const Extent& box) {
    const Vec2 free = freeSize(camera);
    const Margins margins = marginsFor(free);
    const Vec2 room{std::max(free.x - margins.left - margins.right, 1.0),
                    std::max(free.y - margins.top - margins.bottom, 1.0)};
    const Vec2 size = box.high - box.low;
    double scale = kGreatestScale;
    if (size.x > 0) {
        scale = std::min(scale, room.x / size.x);
    }
    if (size.y > 0) {
        scale = std::min(scale, room.y / size.y);
    }
    Camera fitted = camera;
    fitted.scale = size.x > 0 || size.y > 0 ? boundedScale(scale) : camera.scale;
    const Vec2 middleOfRoom =
        freeMiddle(camera) + 0.5 * Vec2{margins.left - margins.right, margins.top - margins.bottom};
    return holding(fitted, 0.5 * (box.low + box.high), middleOfRoom);
}

Extent boardExtent(const Truss& truss) {
    if (truss.joints.empty()) {
        return {{0, 0}, sheetToBeginOn(truss.units.length)};
    }
    Extent box = extent(truss);
    const Vec2 size = box.high - box.low;
    if (size.x == 0 && size.y == 0) { // a single joint: centre the same sheet on it
        const Vec2 half = 0.5 * sheetToBeginOn(truss.units.length);
        return {box.low - half, box.high + half};
    }
    return box;
}

double gridStepFor(const Camera& camera) {
    const double least = kGridApart / camera.scale;
    const double decade = std::pow(10, std::floor(std::log10(least)));
    for (const double multiple : {1.0, 2.0, 5.0}) {
        // The tolerance keeps a step that is meant to be exactly wide enough.
        if (multiple * decade >= least * (1 - kHair)) {
            return multiple * decade;
        }
    }
    return 10 * decade;
}

} // namespace gusset
