#include "app/state/layout.hpp"

#include "app/state/camera.hpp"

#include <catch2/catch_test_macros.hpp>

#include <vector>

using namespace gusset;

namespace {

const std::vector<Vec2> kPages{{1366, 768}, {1024, 768}, {768, 1024}, {390, 844},
                               {844, 390},  {667, 375},  {360, 640},  {320, 480}};

Viewport viewportOf(Vec2 size) {
    Viewport viewport;
    viewport.size = size;
    return viewport;
}

NotebookState notebook(bool open) {
    NotebookState state;
    state.open = open;
    return state;
}

bool overlap(const Rect& one, const Rect& other) {
    return one.at.x < other.at.x + other.size.x && other.at.x < one.at.x + one.size.x &&
           one.at.y < other.at.y + other.size.y && other.at.y < one.at.y + one.size.y;
}

bool isWithin(const Rect& rect, Vec2 page) {
    return rect.at.x >= 0 && rect.at.y >= 0 && rect.at.x + rect.size.x <= page.x &&
           rect.at.y + rect.size.y <= page.y;
}

} // namespace

TEST_CASE("header, tools and notebook stand on the page and off one another") {
    for (const Vec2 page : kPages) {
        for (const bool open : {true, false}) {
            const PageLayout layout = layoutFor(viewportOf(page), notebook(open));
            CAPTURE(page.x, page.y, open);
            CHECK(isWithin(layout.header, page));
            CHECK(isWithin(layout.tools, page));
            CHECK(isWithin(layout.notebook, page));
            CHECK_FALSE(overlap(layout.header, layout.tools));
            CHECK_FALSE(overlap(layout.header, layout.notebook));
            CHECK_FALSE(overlap(layout.tools, layout.notebook));
        }
    }
}

TEST_CASE("six tools of a finger's size fit into their strip") {
    for (const Vec2 page : kPages) {
        const PageLayout layout = layoutFor(viewportOf(page), notebook(true));
        CAPTURE(page.x, page.y);
        CHECK(layout.tools.size.x >= 6 * kTouchTarget);
        CHECK(layout.tools.size.y >= kTouchTarget);
        CHECK(layout.header.size.y >= kTouchTarget);
    }
}

TEST_CASE("the notebook is a column on wide pages and a sheet on narrow ones") {
    CHECK_FALSE(layoutFor(viewportOf({1366, 768}), notebook(true)).narrow);
    CHECK(layoutFor(viewportOf({390, 844}), notebook(true)).narrow);
    CHECK(layoutFor(viewportOf({768, 1024}), notebook(true)).narrow); // room below, not beside
    CHECK_FALSE(layoutFor(viewportOf({1024, 768}), notebook(true)).narrow);
    // A phone in landscape has no height to spare.
    CHECK_FALSE(layoutFor(viewportOf({844, 390}), notebook(true)).narrow);
    CHECK_FALSE(layoutFor(viewportOf({667, 375}), notebook(true)).narrow);
}

TEST_CASE("however wide a notebook is wanted, it leaves the board more than half of the page") {
    NotebookState greedy;
    greedy.width = 5000;
    for (const Vec2 page : kPages) {
        const PageLayout layout = layoutFor(viewportOf(page), greedy);
        if (!layout.narrow) {
            CAPTURE(page.x);
            CHECK(layout.notebook.size.x <= 0.45 * page.x);
        }
    }
}

TEST_CASE("in reading mode the working has most of the page, with its buttons at the bottom") {
    NotebookState reading = notebook(true);
    reading.reading = true;
    for (const Vec2 page : kPages) {
        const Viewport viewport = viewportOf(page);
        if (!readsApart(viewport)) {
            continue;
        }
        const PageLayout layout = layoutFor(viewport, reading);
        CAPTURE(page.x, page.y);
        CHECK(layout.reading);
        CHECK(layout.tools.size == Vec2{0, 0});
        CHECK(layout.reader.size.y >= kTouchTarget);
        CHECK(layout.reader.at.y + layout.reader.size.y == page.y);
        CHECK(isWithin(layout.notebook, page));
        CHECK_FALSE(overlap(layout.notebook, layout.header));
        CHECK_FALSE(overlap(layout.notebook, layout.reader));
        CHECK(layout.notebook.size.x * layout.notebook.size.y >= 0.45 * page.x * page.y);
        const Camera camera = withLayout({}, viewport, layout);
        CHECK(toPixel(camera, camera.centre).y < layout.reader.at.y);
        CHECK(page.y - camera.coverTop - camera.coverBottom >= 100); // of the picture
    }
    CHECK(readsApart(viewportOf({390, 844})));
    CHECK(readsApart(viewportOf({844, 390})));
    CHECK(readsApart(viewportOf({768, 1024})));
    CHECK_FALSE(readsApart(viewportOf({1024, 768})));
}

TEST_CASE("a page enlarged four times has the board or the notebook, each as large as it can be") {
    const Viewport tiny = viewportOf({342, 192}); // 1366 × 768 at 400 %
    const PageLayout closed = layoutFor(tiny, notebook(false));
    CHECK(closed.tools.size.x > 0);
    CHECK(closed.tools.at.y - closed.header.size.y >= 60); // height of the board
    const PageLayout open = layoutFor(tiny, notebook(true));
    CHECK(open.tools.size.x == 0);
    CHECK(open.notebook == Rect{{0, open.header.size.y}, {342, 192 - open.header.size.y}});
    CHECK(withLayout({}, tiny, open) == withLayout({}, tiny, closed)); // the drawing does not move
}

TEST_CASE("the camera's middle is the middle of what is free of header, notebook and tools") {
    for (const Vec2 page : kPages) {
        const Viewport viewport = viewportOf(page);
        const PageLayout layout = layoutFor(viewport, notebook(true));
        const Camera camera = withLayout({}, viewport, layout);
        const Vec2 middle = toPixel(camera, camera.centre);
        const double right = layout.narrow ? page.x : layout.notebook.at.x;
        CAPTURE(page.x, page.y);
        CHECK(middle.x == right / 2);
        CHECK(middle.y == (layout.header.size.y + layout.tools.at.y - kHintHeight) / 2);
    }
}
