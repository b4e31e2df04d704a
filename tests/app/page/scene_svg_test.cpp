#include "ui/scene_svg.hpp"

#include "app/roof_board.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cstdlib>

using namespace gusset;
using namespace gusset::support;

namespace {

struct Picture {
    Scene scene;
    std::string svg;
};

Picture pictureOf(Board& board, PaletteName theme = PaletteName::Paper) {
    derive(board.state, board.derived);
    const MeasureText measuring = measure;
    Picture picture;
    picture.scene = pictureScene(board.state, board.derived, measuring);
    picture.svg = sceneSvg(
        picture.scene,
        {.palette = paletteOf(theme), .measure = measuring, .title = board.state.truss.title});
    return picture;
}

std::size_t count(const std::string& text, const std::string& part) {
    std::size_t found = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
        ++found;
    }
    return found;
}

double attributeOf(const std::string& svg, const std::string& name) {
    const std::string head = " " + name + "=\"";
    return std::strtod(svg.c_str() + svg.find(head) + head.size(), nullptr);
}

} // namespace

TEST_CASE("A picture of the board has every mark of its scene") {
    Board board = roofBoard();
    const auto [scene, svg] = pictureOf(board);
    REQUIRE(scene.lines.size() > 3);
    CHECK(count(svg, "<path ") == scene.lines.size());
    CHECK(count(svg, "<polygon ") == scene.triangles.size());
    CHECK(count(svg, "<circle ") == scene.discs.size());
    CHECK(count(svg, "<text ") == scene.labels.size());
    for (const LabelMark& label : scene.labels) {
        CHECK(svg.find(">" + label.text + "</text>") != std::string::npos);
    }
}

TEST_CASE("A picture is in the colours of its theme, on its paper") {
    for (const PaletteName theme : kPaletteNames) {
        Board board = roofBoard();
        const std::string svg = pictureOf(board, theme).svg;
        // The dark theme's paper is #1f1d1a, the others' are light.
        CHECK((svg.find("fill=\"#1f1d1a\"") != std::string::npos) == (theme == PaletteName::Dark));
        // The tie carries 10/2 · 3/4 = 3.75 in tension: PuOr's purple, pale on dark paper.
        const char* purple =
            theme == PaletteName::Dark ? "stroke=\"#b2abd2\"" : "stroke=\"#542788\"";
        CHECK(count(svg, purple) >= 1);
    }
}

TEST_CASE("A picture is cropped to the drawing, and goes no farther than the board is seen") {
    Board board = roofBoard();
    const Picture fitted = pictureOf(board);
    const Camera& camera = board.state.view.camera;
    // The board is 1366 by 768, the roof 6 by 4: its height fills the board, its width does not.
    CHECK(attributeOf(fitted.svg, "width") < camera.size.x - camera.coverRight);
    CHECK(attributeOf(fitted.svg, "height") <= camera.size.y);
    // 6 m from A to B, plus room for symbols and labels on either side.
    CHECK(attributeOf(fitted.svg, "width") > 6 * camera.scale);

    board.act(SetCamera{zoomAbout(camera, {400, 400}, 6)});
    const Picture near = pictureOf(board);
    const Camera& zoomed = board.state.view.camera;
    CHECK(attributeOf(near.svg, "width") <= zoomed.size.x - zoomed.coverRight);
}

TEST_CASE("A picture of nothing is a sheet of paper") {
    Board board;
    const Picture empty = pictureOf(board);
    CHECK(attributeOf(empty.svg, "width") > 0);
    CHECK(count(empty.svg, "<path ") == 0);
}

TEST_CASE("Names and titles are escaped in a picture") {
    Truss truss = roof();
    truss.title = "<script>alert('x')</script> & \x01\"more\"";
    truss.joints[0].label = "<b>&";
    Board board;
    board.state = startWith(truss);
    const std::string svg = pictureOf(board).svg;
    CHECK(svg.find("<script") == std::string::npos);
    CHECK(svg.find("<b>") == std::string::npos);
    CHECK(svg.find("&lt;script&gt;") != std::string::npos);
    CHECK(svg.find("&lt;b&gt;&amp;") != std::string::npos);
    CHECK(svg.find('\x01') == std::string::npos);
}

TEST_CASE("What is selected or in hand is no part of a picture") {
    Board board = roofBoard();
    const std::string before = pictureOf(board).svg;
    Things things;
    things.members = {MemberId{0}};
    board.act(SetSelection{things});
    board.down({3, 4});
    CHECK(pictureOf(board).svg == before);
}
