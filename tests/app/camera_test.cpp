#include "canvas/camera.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

using namespace gusset;
using Catch::Matchers::WithinAbs;

TEST_CASE("up on the board is up on the screen") {
    const Camera camera{.centre = {2, 1}, .viewport = {800, 600}, .pixelsPerMetre = 50};
    // 1 m above the centre is 50 px above the middle of an 800 by 600 view.
    CHECK(worldToScreen(camera, {2, 2}) == Vec2{400, 250});
}

TEST_CASE("a screen point comes back from the world to where it was") {
    const Camera camera{.centre = {-3.7, 12.1}, .viewport = {390, 844}, .pixelsPerMetre = 37.3};
    const Vec2 back = worldToScreen(camera, screenToWorld(camera, {17, 801}));
    CHECK_THAT(back.x, WithinAbs(17, 1e-9));
    CHECK_THAT(back.y, WithinAbs(801, 1e-9));
}

TEST_CASE("zooming keeps the point under the cursor where it is") {
    const Camera camera{.centre = {2, 1}, .viewport = {800, 600}, .pixelsPerMetre = 50};
    const Vec2 cursor{120, 430};
    const Camera zoomed = zoomedAbout(camera, cursor, 1.25);
    const Vec2 before = screenToWorld(camera, cursor);
    const Vec2 after = screenToWorld(zoomed, cursor);
    CHECK(zoomed.pixelsPerMetre == 62.5);
    CHECK_THAT(after.x, WithinAbs(before.x, 1e-12));
    CHECK_THAT(after.y, WithinAbs(before.y, 1e-12));
}
