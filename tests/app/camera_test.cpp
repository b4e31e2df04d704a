#include "canvas/camera.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

using namespace gusset;
using Catch::Matchers::WithinAbs;

TEST_CASE("up on the board is up on the screen") {
    const Camera camera{.centre = {2, 1}, .scale = 50, .size = {800, 600}};
    // 1 m above the centre is 50 px above the middle of an 800 by 600 view.
    CHECK(toPixel(camera, {2, 2}) == Vec2{400, 250});
}

TEST_CASE("a screen point comes back from the world to where it was") {
    const Camera camera{
        .centre = {-3.7, 12.1}, .scale = 37.3, .size = {390, 844}, .coverBottom = 300};
    const Vec2 back = toPixel(camera, toWorld(camera, {17, 801}));
    CHECK_THAT(back.x, WithinAbs(17, 1e-9));
    CHECK_THAT(back.y, WithinAbs(801, 1e-9));
}

TEST_CASE("zooming keeps the point under the cursor where it is") {
    const Camera camera{.centre = {2, 1}, .scale = 50, .size = {800, 600}};
    const Vec2 cursor{120, 430};
    const Camera zoomed = zoomAbout(camera, cursor, 1.25);
    const Vec2 before = toWorld(camera, cursor);
    const Vec2 after = toWorld(zoomed, cursor);
    CHECK(zoomed.scale == 62.5);
    CHECK_THAT(after.x, WithinAbs(before.x, 1e-12));
    CHECK_THAT(after.y, WithinAbs(before.y, 1e-12));
}
