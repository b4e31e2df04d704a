// The force polygon as a drawing: true to scale, readable, and with lines that can be touched.

#include "report/derivation/force_polygon_sketch.hpp"

#include "support/reading/sketch_checks.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>
#include <functional>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double kCentimetre = 96 / 2.54; // px, as CSS defines it

using PolygonVisit = std::function<void(const Truss&, const Solution&, const ForcePolygon&)>;

// All those of 300 random trusses that have a polygon; returns how many.
int forEveryPolygon(const PolygonVisit& visit) {
    int count = 0;
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        const Truss truss = randomDeterminateTruss(seed);
        const Solution solution = solve(truss);
        const ForcePolygon polygon = forcePolygon(truss, {}, solution);
        if (polygon.refusal == PolygonRefusal::None) {
            INFO("seed " << seed);
            visit(truss, solution, polygon);
            ++count;
        }
    }
    return count;
}

bool shows(const Sketch& sketch, const std::string& text) {
    return std::any_of(sketch.words.begin(), sketch.words.end(),
                       [&](const auto& words) { return plainText(words.words) == text; });
}

Sketch spacesOf(const Truss& truss, const Solution& solution, const ForcePolygon& polygon) {
    const Working working = workOut(truss, {}, solution);
    return spacesSketch(notationOf({englishPhrases(), truss}, working), polygon);
}

} // namespace

TEST_CASE("every line of a drawn polygon has its force to scale, parallel to it on paper") {
    const int count = forEveryPolygon([](const Truss& truss, const Solution& solution,
                                         const ForcePolygon& polygon) {
        const PolygonDrawing drawing = polygonDrawing({englishPhrases(), truss}, polygon, {});
        REQUIRE(drawing.lines.size() == polygon.lines.size());
        for (std::size_t i = 0; i < polygon.lines.size(); ++i) {
            const PolygonLine& line = polygon.lines[i];
            const Vec2 run = drawing.lines[i].b - drawing.lines[i].a;
            const double force = length(run) / kCentimetre * drawing.perCentimetre;
            const double small = 1e-9 * solution.largest / 1000;
            REQUIRE_THAT(force, WithinAbs(std::fabs(line.force), small));
            if (line.member.valid()) {
                const Vec2 along = memberVector(truss, line.member);
                REQUIRE_THAT(cross(Vec2{run.x, -run.y}, along) / length(along), WithinAbs(0, 1e-6));
            }
        }
    });
    CHECK(count > 50);
}

TEST_CASE("the scale is the largest round one at which the polygon fits") {
    forEveryPolygon([](const Truss& truss, const Solution&, const ForcePolygon& polygon) {
        const PolygonLook look;
        const PolygonDrawing drawing = polygonDrawing({englishPhrases(), truss}, polygon, look);
        double wide = 0;
        double high = 0;
        for (const PolygonSpace& a : polygon.spaces) {
            for (const PolygonSpace& b : polygon.spaces) {
                wide = std::max(wide, a.point.x - b.point.x);
                high = std::max(high, a.point.y - b.point.y);
            }
        }
        const auto fits = [&](double scale) {
            return wide / scale * kCentimetre <= look.width + 1e-6 &&
                   high / scale * kCentimetre <= look.height + 1e-6;
        };
        REQUIRE(fits(drawing.perCentimetre));
        // The largest step between round scales is a factor of two.
        REQUIRE_FALSE(fits(drawing.perCentimetre / 2 * 0.999));
        const double power = std::pow(10.0, std::floor(std::log10(drawing.perCentimetre) + 1e-9));
        const double lead = drawing.perCentimetre / power;
        REQUIRE(std::min({std::fabs(lead - 1), std::fabs(lead - 2), std::fabs(lead - 2.5),
                          std::fabs(lead - 5)}) < 1e-9);
    });
}

TEST_CASE("polygons can be read at every stage of their drawing, and letters only what is drawn") {
    const int count = forEveryPolygon([](const Truss& truss, const Solution&,
                                         const ForcePolygon& polygon) {
        for (std::size_t drawn = 0; drawn <= polygon.lines.size(); ++drawn) {
            PolygonLook look;
            look.drawn = drawn;
            look.lit = drawn > 0 ? std::optional(drawn - 1) : std::nullopt;
            const PolygonDrawing drawing = polygonDrawing({englishPhrases(), truss}, polygon, look);
            INFO(drawn << " lines");
            REQUIRE(drawing.lines.size() == drawn);
            REQUIRE(faultOfSketch(drawing.sketch) == "");
            REQUIRE((drawing.sketch.words.size() == 1) == (drawn == 0)); // the scale's
        }
    });
    CHECK(count > 50);
}

TEST_CASE("the truss beside its polygon has the letter of every space") {
    forEveryPolygon([](const Truss& truss, const Solution& solution, const ForcePolygon& polygon) {
        const Sketch sketch = spacesOf(truss, solution, polygon);
        REQUIRE(faultOfSketch(sketch) == "");
        for (const PolygonSpace& space : polygon.spaces) {
            REQUIRE(shows(sketch, space.name));
        }
    });
}

TEST_CASE("the polygon of a gable is drawn 1 cm to 2.5 kN, with a bar of two centimetres") {
    // 24 kN high: 9.6 cm = 363 px of 400 at 2.5 kN, 454 px at 2 kN
    const Truss truss = gable();
    const PolygonDrawing drawing =
        polygonDrawing({englishPhrases(), truss}, forcePolygon(truss, {}, solve(truss)), {});
    CHECK_THAT(drawing.perCentimetre, WithinRel(2.5, 1e-12));
    CHECK(shows(drawing.sketch, "1 cm = 2.5\u2009kN"));
    CHECK(std::any_of(drawing.sketch.lines.begin(), drawing.sketch.lines.end(), [](const auto& it) {
        return it.a.y == it.b.y && std::fabs(it.b.x - it.a.x - 2 * kCentimetre) < 1e-9;
    }));
    for (const char* name : {"p", "q", "r", "1"}) {
        CHECK(shows(drawing.sketch, name));
    }
}

TEST_CASE("spaces whose points fall together share one place for their letters") {
    // A rafter bay without force: C on the tie is unloaded, so 1 and 2 are the same point.
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 8, 0);
    joint(truss, "C", 4, 0);
    joint(truss, "D", 4, 3);
    members(truss, {"AC", "CB", "AD", "DB", "CD"});
    pin(truss, "A");
    roller(truss, "B");
    force(truss, "D", 0, -24);
    const PolygonDrawing drawing =
        polygonDrawing({englishPhrases(), truss}, forcePolygon(truss, {}, solve(truss)), {});
    CHECK(shows(drawing.sketch, "1, 2"));
}

TEST_CASE("a touch finds the nearest line within reach, and none farther off") {
    forEveryPolygon([](const Truss& truss, const Solution&, const ForcePolygon& polygon) {
        const PolygonDrawing drawing = polygonDrawing({englishPhrases(), truss}, polygon, {});
        for (const SketchStroke& line : drawing.lines) {
            const Vec2 middle = 0.5 * (line.a + line.b);
            if (length(line.b - line.a) < 1) {
                continue;
            }
            const std::optional<std::size_t> found = polygonLineAt(drawing, middle, 5);
            REQUIRE(found);
            const SketchStroke& hit = drawing.lines[*found];
            const Vec2 run = hit.b - hit.a;
            REQUIRE_THAT(cross(run, middle - hit.a) / length(run), WithinAbs(0, 1e-6));
        }
        REQUIRE_FALSE(polygonLineAt(drawing, {-50, -50}, 5));
    });
}

TEST_CASE("two sketches side by side keep their marks apart") {
    const Truss truss = gable();
    const ForcePolygon polygon = forcePolygon(truss, {}, solve(truss));
    const Sketch left = spacesOf(truss, solve(truss), polygon);
    const Sketch right = polygonDrawing({englishPhrases(), truss}, polygon, {}).sketch;
    const Sketch both = sideBySide(left, right, 24);
    CHECK(faultOfSketch(both) == "");
    CHECK(both.words.size() == left.words.size() + right.words.size());
    CHECK(both.words.back().at.x == right.words.back().at.x + left.width + 24);
}
