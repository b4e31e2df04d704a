#include "app/state/camera.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <cmath>

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

TEST_CASE("two fingers keep the points under them") {
    const Camera camera{.centre = {2, 1}, .scale = 50, .size = {800, 600}, .coverRight = 200};
    // The second pair has the same direction, so that pan and zoom without rotation can follow
    // exactly.
    const Vec2 fromA{100, 100}, fromB{200, 150}, toA{150, 300}, toB{350, 400};
    const Camera moved = pinch(camera, fromA, fromB, toA, toB);
    CHECK_THAT(moved.scale, WithinAbs(100, 1e-9)); // the distance between the fingers has doubled
    const Vec2 underA = toPixel(moved, toWorld(camera, fromA));
    const Vec2 underB = toPixel(moved, toWorld(camera, fromB));
    CHECK_THAT(underA.x, WithinAbs(toA.x, 1e-9));
    CHECK_THAT(underA.y, WithinAbs(toA.y, 1e-9));
    CHECK_THAT(underB.x, WithinAbs(toB.x, 1e-9));
    CHECK_THAT(underB.y, WithinAbs(toB.y, 1e-9));
}

TEST_CASE("two fingers on one spot move the board and don't tear it") {
    const Camera camera{.centre = {2, 1}, .scale = 50, .size = {800, 600}};
    const Camera moved = pinch(camera, {100, 100}, {100, 100}, {140, 90}, {140, 90});
    CHECK(moved.scale == 50);
    const Vec2 under = toPixel(moved, toWorld(camera, {100, 100}));
    CHECK_THAT(under.x, WithinAbs(140, 1e-9));
    CHECK_THAT(under.y, WithinAbs(90, 1e-9));
}

TEST_CASE("on a board as low as a thumb's breadth the drawing still has two fifths of it") {
    Camera camera;
    camera.size = {342, 192};
    camera.coverTop = 52;
    camera.coverBottom = 68;
    const Camera fitted = fitTo(camera, {{0, 0}, {3, 3}});
    const double high = toPixel(fitted, {0, 0}).y - toPixel(fitted, {0, 3}).y;
    CHECK_THAT(high, WithinAbs(0.4 * (192 - 52 - 68), 1e-9));
    CHECK(toPixel(fitted, {0, 3}).y > 52);
    CHECK(toPixel(fitted, {0, 0}).y < 192 - 68);
}

TEST_CASE("panning moves the drawing with the hand") {
    const Camera camera{.centre = {2, 1}, .scale = 50, .size = {800, 600}};
    const Vec2 before = toPixel(camera, {3, 3});
    const Vec2 after = toPixel(panBy(camera, {30, -20}), {3, 3});
    CHECK_THAT(after.x, WithinAbs(before.x + 30, 1e-9));
    CHECK_THAT(after.y, WithinAbs(before.y - 20, 1e-9));
}

TEST_CASE("zooming in and in and out and out ends somewhere sane") {
    Camera camera{.centre = {2, 1}, .scale = 50, .size = {800, 600}};
    for (int i = 0; i < 1000; ++i) {
        camera = zoomAbout(camera, {10, 10}, 2);
    }
    CHECK(camera.scale == 1e8);
    for (int i = 0; i < 1000; ++i) {
        camera = zoomAbout(camera, {10, 10}, 0.5);
    }
    CHECK(camera.scale == 1e-6);
    CHECK(isFinite(toPixel(camera, {0, 0})));
}

TEST_CASE("fitting shows a truss of a millimetre and one of ten kilometres, free of what covers "
          "the board") {
    for (const double size : {0.001, 1.0, 12.0, 10000.0, 1e7}) {
        for (const Vec2 page : {Vec2{1366, 768}, Vec2{768, 1024}, Vec2{390, 844}, Vec2{320, 480}}) {
            Camera camera;
            camera.size = page;
            camera.coverRight = 0.3 * page.x;
            camera.coverBottom = 0.3 * page.y;
            camera.coverTop = 52;
            const Extent box{{-size, 0}, {size, 0.4 * size}};
            const Camera fitted = fitTo(camera, box);
            const Vec2 low = toPixel(fitted, box.low);
            const Vec2 high = toPixel(fitted, box.high);
            CAPTURE(size, page.x, low.x, low.y, high.x, high.y);
            CHECK(low.x > 20);
            CHECK(high.x < 0.7 * page.x - 20);
            CHECK(high.y > 52 + 20);
            CHECK(low.y < 0.7 * page.y - 20);
            // It uses the space: one of the two sides takes at least a third of the free board.
            CHECK((high.x - low.x > 0.7 * page.x / 3 || low.y - high.y > (0.7 * page.y - 52) / 3));
        }
    }
}

TEST_CASE("grid lines stand 24 to 60 px apart, 1, 2 or 5 of a power of ten") {
    for (double scale = 1e-6; scale < 1e8; scale *= 1.37) {
        Camera camera;
        camera.scale = scale;
        const double step = gridStepFor(camera);
        const double apart = step * scale;
        CAPTURE(scale, step);
        CHECK(apart >= 24 * (1 - 1e-6));
        CHECK(apart <= 60 * (1 + 1e-6));
        const double mantissa = step / std::pow(10, std::floor(std::log10(step * (1 + 1e-9))));
        CHECK((std::abs(mantissa - 1) < 1e-6 || std::abs(mantissa - 2) < 1e-6 ||
               std::abs(mantissa - 5) < 1e-6));
    }
}
