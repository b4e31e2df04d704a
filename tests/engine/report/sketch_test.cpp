#include "report/sketch/sketch_svg.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

using namespace gusset;
using Catch::Matchers::WithinAbs;

namespace {

bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

Sketch oneOfEach() {
    Sketch sketch;
    sketch.says = "A <pin> & \"more\"";
    sketch.areas.push_back({{{0, 0}, {10, 0}, {0, 10}}, SketchInk::Tension});
    sketch.lines.push_back({{0, 0}, {30, 40}, SketchInk::Compression, 2, true});
    sketch.arrows.push_back({{0, 0}, {0, 50}, SketchInk::Load, 1.5});
    sketch.arcs.push_back({{20, 20}, 10, {1, 0}, {0, 1}, SketchInk::Muted});
    sketch.discs.push_back({{30, 40}, 3, SketchInk::Zero, true});
    sketch.words.push_back({{{"F", RunStyle::Variable}, {"A\x01<", RunStyle::Subscript}, {"=", {}}},
                            {60, 10},
                            SketchAnchor::Start,
                            SketchInk::Reaction,
                            10});
    return sketch;
}

} // namespace

TEST_CASE("a sketch as SVG has the marks, the meanings of their inks and its sentence") {
    Sketch sketch = oneOfEach();
    fitSketch(sketch, 0);
    const std::string svg = svgOf(sketch);
    CHECK(holds(svg, "<title>A &lt;pin&gt; &amp; &quot;more&quot;</title>"));
    CHECK(holds(svg, "class=\"ink-tension\" fill=\"#542788\" fill-opacity=\"0.25\""));
    CHECK(holds(svg, "class=\"line-compression\""));
    CHECK(holds(svg, "stroke-dasharray"));
    CHECK(holds(svg, "class=\"ink-zero\""));
}

TEST_CASE("a control character never reaches the SVG, for no XML can hold one") {
    const std::string svg = svgOf(oneOfEach());
    CHECK(holds(svg, ">A &lt;</tspan>"));
    CHECK_FALSE(holds(svg, "\x01"));
}

TEST_CASE("what follows a subscript in SVG stands on the line again") {
    // 0.28 of 10 px down, and the same up again
    const std::string svg = svgOf(oneOfEach());
    CHECK(holds(svg, "<tspan dy=\"2.8\" font-size=\"7.2\">"));
    CHECK(holds(svg, "<tspan dy=\"-2.8\">=</tspan>"));
}

TEST_CASE("an arc of a quarter is drawn the short way, one of three quarters the long way") {
    Sketch sketch;
    sketch.arcs.push_back({{20, 20}, 10, {1, 0}, {0, 1}, SketchInk::Muted}); // to the right: down
    CHECK(holds(svgOf(sketch), "M30 20A10 10 0 0 1 20 30"));
    sketch.arcs[0].to = {0, -1};
    CHECK(holds(svgOf(sketch), "M30 20A10 10 0 1 1 20 10"));
}

TEST_CASE("a fitted sketch holds all that is in it, with its margin") {
    Sketch sketch;
    sketch.lines.push_back({{-100, 7}, {50, -30}, SketchInk::Plain, 1, false});
    sketch.discs.push_back({{50, -30}, 5, SketchInk::Plain, false});
    fitSketch(sketch, 8);
    // across: from −100 to 55; up: from −35 to 7
    CHECK_THAT(sketch.width, WithinAbs(155 + 16, 1e-12));
    CHECK_THAT(sketch.height, WithinAbs(42 + 16, 1e-12));
    CHECK_THAT(sketch.lines[0].a.x, WithinAbs(8, 1e-12));
    CHECK_THAT(sketch.lines[0].a.y, WithinAbs(8 + 42, 1e-12));
}

TEST_CASE("an arrow's head ends at the tip and is no longer than the arrow") {
    const SketchArrow shortOne{{0, 0}, {0, 4}, SketchInk::Load, 1.5};
    const auto head = headOf(shortOne);
    CHECK(head[0] == Vec2{0, 4});
    CHECK_THAT(head[1].y, WithinAbs(0, 1e-12));
    CHECK(shaftEnd(shortOne) == Vec2{0, 0});
}

TEST_CASE("words take their room to the side that their anchor leaves free") {
    const RichLine line{{"12 kN", RunStyle::Plain}};
    const double width = widthOf(line, 14);
    const SketchBox start = boxOf({line, {100, 50}, SketchAnchor::Start, SketchInk::Plain, 14});
    const SketchBox end = boxOf({line, {100, 50}, SketchAnchor::End, SketchInk::Plain, 14});
    CHECK_THAT(start.high.x, WithinAbs(100 + width, 1e-12));
    CHECK_THAT(end.low.x, WithinAbs(100 - width, 1e-12));
    CHECK_FALSE(overlap(start, end)); // they touch
    CHECK(overlap(start, grown(end, 1)));
    CHECK(widthOf({{"A\u2009B", RunStyle::Plain}}, 10) < widthOf({{"A\u2212B", {}}}, 10));
}
