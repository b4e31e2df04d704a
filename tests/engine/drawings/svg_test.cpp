#include "exchange/drawings/drawing_file.hpp"
#include "exchange/drawings/svg_reader.hpp"
#include "exchange/drawings/svg_shapes.hpp"
#include "support/english.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cmath>
#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

LinesFound svgLines(const std::string& inside, const std::vector<std::string>& layers = {}) {
    const Outcome<LinesFound> found =
        readSvg("<svg xmlns=\"http://www.w3.org/2000/svg\">" + inside + "</svg>", layers);
    REQUIRE(found);
    return found.value();
}

bool svgTells(const Issues& issues, const std::string& words) {
    std::string all;
    for (const Issue& issue : issues) {
        all += english(issue) + "\n";
    }
    UNSCOPED_INFO(all);
    return all.find(words) != std::string::npos;
}

bool isNear(Vec2 a, Vec2 b) { return length(a - b) < 1e-9; }

} // namespace

TEST_CASE("Lines, polylines, polygons, rectangles and paths are read, with y turned up") {
    CHECK(svgLines("<line x1='0' y1='1' x2='4' y2='3'/>").lines.front() ==
          DrawnLine{{0, -1}, {4, -3}});
    CHECK(svgLines("<polyline points='0,0 4,0 2,3'/>").lines.size() == 2);
    CHECK(svgLines("<polygon points='0,0 4,0 2,3'/>").lines.size() == 3);
    const LinesFound rect = svgLines("<rect x='1' y='2' width='4' height='3'/>");
    REQUIRE(rect.lines.size() == 4);
    CHECK(rect.lines[1] == DrawnLine{{5, -2}, {5, -5}});
    const LinesFound path = svgLines("<path d='M1 1h3v2H1zm5,0 1,1-2.5.5L0 0'/>");
    REQUIRE(path.lines.size() == 7);
    CHECK(path.lines[3] == DrawnLine{{1, -3}, {1, -1}});
    CHECK(path.lines[4] == DrawnLine{{6, -1}, {7, -2}});     // m5,0 from the start, then relative
    CHECK(path.lines[5] == DrawnLine{{7, -2}, {4.5, -2.5}}); // "-2.5.5": two numbers
    CHECK(path.lines[6] == DrawnLine{{4.5, -2.5}, {0, 0}});
}

TEST_CASE("Transformations of groups apply from the inside out") {
    // a point (1, 0), turned by 90 degrees (y downwards: to (0, 1)), doubled, moved by (10, 20)
    const LinesFound found =
        svgLines("<g transform='translate(10,20)'><g transform='scale(2) rotate(90)'>"
                 "<line x1='0' y1='0' x2='1' y2='0'/></g></g>");
    CHECK(found.lines.front() == DrawnLine{{10, -20}, {10, -22}});
    const auto turned = svgTransform("rotate(90 1 1)"); // (2, 1) to (1, 2)
    REQUIRE(turned);
    CHECK(isNear(turned->of({2, 1}), {1, 2}));
    const auto skewed = svgTransform("skewX(45), skewY(0)"); // x + y
    REQUIRE(skewed);
    CHECK(isNear(skewed->of({1, 2}), {3, 2}));
    const auto matrix = svgTransform("matrix(1 2 3 4 5 6)"); // (1+3+5, 2+4+6)
    REQUIRE(matrix);
    CHECK(isNear(matrix->of({1, 1}), {9, 12}));
    for (const char* bad : {"rotate(", "turn(3)", "scale(1 2 3)", "scale()", "translate(NaN)"}) {
        CHECK_FALSE(svgTransform(bad));
    }
}

TEST_CASE("Curves, texts, copies and what is hidden are counted and told") {
    const LinesFound found = svgLines(
        "<path d='M0 0C1 1 2 2 3 3L4 4A1 1 0 01 5 5l1 0'/><circle r='1'/><text>A</text>"
        "<use href='#a'/><image href='https://example.org/a.png'/>"
        "<g display='none'><line x2='1'/></g><line style='stroke:red; display: none' x2='1'/>"
        "<defs><line x2='1'/></defs>");
    REQUIRE(found.lines.size() == 2); // 3 3 to 4 4, 5 5 to 6 5
    CHECK(found.lines[1] == DrawnLine{{5, -5}, {6, -5}});
    CHECK(svgTells(found.notes, "path: 2 passed over, as only straight lines"));
    CHECK(svgTells(found.notes, "circle: 1 passed over, as only straight lines"));
    CHECK(svgTells(found.notes, "text: 1 passed over, as texts"));
    CHECK(svgTells(found.notes, "use: 1 passed over, as copies"));
    CHECK(svgTells(found.notes, "image: 1 passed over"));
    CHECK(svgTells(found.notes, "g: 1 passed over for not being shown"));
    CHECK(svgTells(found.notes, "line: 1 passed over for not being shown"));
}

TEST_CASE("Scripts are never looked into, and entities never grow") {
    const LinesFound found = svgLines("<script><![CDATA[ <line x1='0' x2='9'/> ]]></script>"
                                      "<style>/* <line/> */</style><line x2='&#52;'/>");
    REQUIRE(found.lines.size() == 1);
    CHECK(found.lines.front() == DrawnLine{{0, 0}, {4, 0}}); // &#52; is the digit 4
    std::string laughs = "<!DOCTYPE svg [<!ENTITY a \"9\"><!ENTITY b \"&a;&a;&a;\">]>"
                         "<svg><line x1='&b;' x2='1'/><line x2='3'/></svg>";
    const Outcome<LinesFound> harmless = readSvg(laughs, {});
    REQUIRE(harmless);
    CHECK(harmless.value().lines.size() == 1);
    CHECK(svgTells(harmless.value().notes, "this <line> is left out: \"&b;\" can't be read"));
}

TEST_CASE("Damage in an SVG is told with its line, and what came before is read") {
    const auto broken = [](const std::string& text, const std::string& words, std::size_t lines) {
        const Outcome<LinesFound> found = readSvg(text, {});
        REQUIRE(found);
        CHECK(found.value().lines.size() == lines);
        CHECK(svgTells(found.value().notes, words));
    };
    broken("<svg>\n<line x2='1'/>\n<g>", "line 3: the file ends within <g>", 1);
    broken("<svg>\n<line x2='1'/>\n<line x2=", "line 3: the file ends within a tag", 1);
    broken("<svg><line x2='1'/></g>", "</g> closes nothing that is open", 1);
    broken("<svg><line x2=1/></svg>", "this tag can't be read", 0);
    broken("<svg><line x2='50%'/></svg>", "this <line> is left out: \"50%\" can't be read", 0);
    broken("<svg><path d='M0 0L1 1 nan'/></svg>", "this path is read up to \"nan\"", 1);
    broken("<svg><g transform='spin(1)'><line x2='1'/></g></svg>",
           "\"spin(1)\" is no transformation", 0);
    broken("<svg><g transform='scale(1e12)'><line x2='1e5'/></g></svg>", "this <line> is left out",
           0);
    std::string deep = "<svg>";
    for (int i = 0; i < 300; ++i) {
        deep += "<g>";
    }
    broken(deep, "nested more than 256 deep", 0);
    const Outcome<LinesFound> page = readSvg("<html></html>", {});
    REQUIRE_FALSE(page);
    CHECK(svgTells(page.issues(), "is no SVG: it begins with <html>"));
}

TEST_CASE("Groups with an id are layers, and lengths may have units of the screen") {
    const std::string text = "<g id='truss'><line x2='96px'/><g><line x2='1in'/></g></g>"
                             "<g id='notes'><line x2='25.4mm'/></g>";
    CHECK(svgLines(text).lines.size() == 3);
    const LinesFound truss = svgLines(text, {"truss"});
    REQUIRE(truss.lines.size() == 2);
    CHECK(truss.lines[0] == truss.lines[1]);
    CHECK(isNear(svgLines(text, {"notes"}).lines.front().to, {96, 0}));
}

TEST_CASE("A drawing on the screen begins at 0, 0 and is scaled by its width") {
    const Outcome<Traced> traced = readDrawing("<?xml version='1.0'?><!-- a roof --><svg><polygon "
                                               "points='100,300 500,300 300,150'/></svg>",
                                               {{}, {}, 8, {}});
    REQUIRE(traced);
    const Truss& truss = traced.value().truss;
    REQUIRE(truss.joints.size() == 3);
    CHECK(truss.joints[0].at == Vec2{0, 0});
    CHECK(truss.joints[1].at == Vec2{4, 3}); // 150 units high, 0.02 m each
    CHECK(truss.joints[2].at == Vec2{8, 0});
}
