// Influence lines as drawings and as text.

#include "report/results/influence_text.hpp"
#include "report/sketch/influence_sketch.hpp"

#include "support/random.hpp"
#include "support/reading/sketch_checks.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

// Every member of a strip in turn, drawn at several widths.
template <class Check>
void forEveryLine(Check check) {
    for (const int panels : {2, 6, 19}) {
        Truss truss = stripTruss(Web::Pratt, panels);
        for (const NumberForm form : {NumberForm::Decimals, NumberForm::Exact}) {
            truss.classSettings.form = form;
            for (std::size_t i = 0; i<truss.members.size(); i += panels> 10 ? 7 : 1) {
                Effect effect;
                effect.member = MemberId{static_cast<int>(i)};
                const auto path = bottomChord(truss, panels);
                const InfluenceReport report = influenceReport(truss, path, effect).value();
                for (const double width : {240.0, 340.0, 640.0, 1200.0}) {
                    check(truss, report, InfluenceLook{width, {}});
                }
            }
        }
    }
}

double sizeOf(const SketchArea& area) { // by the shoelace formula, px²
    double twice = 0;
    for (std::size_t i = 0; i < area.corners.size(); ++i) {
        twice += cross(area.corners[i], area.corners[(i + 1) % area.corners.size()]);
    }
    return std::fabs(twice) / 2;
}

double washed(const Sketch& sketch, SketchInk ink) {
    double sum = 0;
    for (const SketchArea& area : sketch.areas) {
        sum += area.ink == ink ? sizeOf(area) : 0;
    }
    return sum;
}

} // namespace

TEST_CASE("words of an influence line stand clear of each other, of the line and of the edge") {
    forEveryLine([](const Truss& truss, const InfluenceReport& report, InfluenceLook look) {
        for (const double mark : {-1.0, 0.0, 2.9, 1e9}) {
            look.mark = mark < 0 ? std::nullopt : std::optional(mark);
            INFO(effectName({englishPhrases(), truss}, report.effect)
                 << ", " << look.width << " px, mark " << mark);
            REQUIRE(faultOfSketch(influenceSketch({englishPhrases(), truss}, report, look)) == "");
        }
    });
}

TEST_CASE("the washed areas of an influence line are in the ratio of its areas") {
    int crossing = 0;
    forEveryLine([&](const Truss& truss, const InfluenceReport& report, InfluenceLook look) {
        const Sketch sketch = influenceSketch({englishPhrases(), truss}, report, look);
        const Areas areas = areasOf(report.line);
        if (areas.positive < 1e-6 || areas.negative > -1e-6) {
            return;
        }
        ++crossing;
        REQUIRE_THAT(washed(sketch, SketchInk::Tension) / washed(sketch, SketchInk::Compression),
                     WithinRel(-areas.positive / areas.negative, 1e-9));
    });
    CHECK(crossing > 50);
}

TEST_CASE("the ends of the path are always named, and its highest ordinate has its value") {
    forEveryLine([](const Truss& truss, const InfluenceReport& report, InfluenceLook look) {
        const std::vector<double>& values = report.line.ordinates;
        const auto high = std::max_element(values.begin(), values.end(), [](double a, double b) {
            return std::fabs(a) < std::fabs(b);
        });
        const Sketch sketch = influenceSketch({englishPhrases(), truss}, report, look);
        const auto shows = [&](const std::string& text) {
            return std::any_of(sketch.words.begin(), sketch.words.end(),
                               [&](const auto& words) { return plainText(words.words) == text; });
        };
        REQUIRE(shows(truss.joints[report.path.front().at()].label));
        REQUIRE(shows(truss.joints[report.path.back().at()].label));
        if (std::fabs(*high) > 1e-9) {
            REQUIRE(shows(
                ordinateText(truss, report, static_cast<std::size_t>(high - values.begin()))));
        }
    });
}

TEST_CASE("a finger reads the line off where it points, and at the ends beyond them") {
    const Truss truss = stripTruss(Web::Pratt, 6); // panels of 3 m
    Effect effect;
    effect.kind = EffectKind::Reaction;
    effect.joint = findJoint(truss, "B0");
    std::vector<JointId> path = bottomChord(truss, 6);
    for (const bool leftwards : {false, true}) {
        if (leftwards) {
            std::reverse(path.begin(), path.end());
        }
        const InfluenceReport report = influenceReport(truss, path, effect).value();
        const InfluenceLook look{400, 4.5};
        const Sketch sketch = influenceSketch({englishPhrases(), truss}, report, look);
        const auto ring = std::find_if(sketch.discs.begin(), sketch.discs.end(),
                                       [](const SketchDisc& disc) { return !disc.filled; });
        REQUIRE(ring != sketch.discs.end());
        CHECK_THAT(readOffAt(truss, report, look, ring->at.x), WithinAbs(4.5, 1e-9));
        CHECK(std::any_of(sketch.words.begin(), sketch.words.end(), [&](const auto& words) {
            return plainText(words.words) == (leftwards ? "+0.25" : "+0.75"); // 1 − 4.5/18
        }));
        CHECK(readOffAt(truss, report, look, leftwards ? 400 : 0) == 0);
        CHECK(readOffAt(truss, report, look, leftwards ? 0 : 400) == 18);
    }
}

TEST_CASE("a path that leads to the left is drawn as it lies on the board") {
    const Truss truss = stripTruss(Web::Pratt, 6);
    std::vector<JointId> path = bottomChord(truss, 6);
    std::reverse(path.begin(), path.end());
    Effect effect;
    effect.member = MemberId{0};
    const InfluenceReport report = influenceReport(truss, path, effect).value();
    const Sketch sketch = influenceSketch({englishPhrases(), truss}, report, {});
    double first = 0;
    double last = 0;
    for (const SketchWords& words : sketch.words) {
        first = plainText(words.words) == "B0" ? words.at.x : first;
        last = plainText(words.words) == "B6" ? words.at.x : last;
    }
    CHECK(first < last);
}

TEST_CASE("the text of an influence line has its ordinates, exactly too, and its areas") {
    // A strip of 6 panels of 3 m. The line of the reaction is
    // 1 − x/18 at x, and an area of 18/2.
    const Truss truss = stripTruss(Web::Pratt, 6);
    Effect effect;
    effect.kind = EffectKind::Reaction;
    effect.joint = findJoint(truss, "B0");
    const std::string text = influenceText(
        {englishPhrases(), truss}, influenceReport(truss, bottomChord(truss, 6), effect).value());
    CHECK(text.find("the vertical reaction at B0") != std::string::npos);
    CHECK(text.find("0.8333") != std::string::npos);
    CHECK(text.find("5/6") != std::string::npos);
    CHECK(text.find("The area above the axis is +9\u2009m, the area below it 0\u2009m.") !=
          std::string::npos);
}

TEST_CASE("what no load on the path changes is said to be zero, not to reach a rounding error") {
    const Truss truss = stripTruss(Web::Pratt, 6);
    Effect effect;
    effect.kind = EffectKind::Reaction;
    effect.joint = findJoint(truss, "B0");
    effect.horizontal = true;
    const InfluenceReport report = influenceReport(truss, bottomChord(truss, 6), effect).value();
    CHECK(influenceSentence({englishPhrases(), truss}, report) ==
          "Influence line of the horizontal reaction at B0: it is zero wherever the load stands.");
    CHECK(influenceSketch({englishPhrases(), truss}, report, {}).areas.empty());
}
