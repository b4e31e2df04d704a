// Closeness to a mechanism is a property of the truss and not of its loads; the effect of rounding
// on small forces and on displacements.

#include "exchange/results/json_results.hpp"
#include "report/results/results_text.hpp"
#include "report/results/trust_text.hpp"
#include "support/dense.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/hard_truss.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

#include <cmath>
#include <numbers>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::ContainsSubstring;
using Catch::Matchers::WithinRel;

namespace {

void shift(Truss& truss, Vec2 by) {
    for (Joint& each : truss.joints) {
        each.at = each.at + by;
    }
}

// A triangle beside it on its own supports, 8 m wide and 3 m high, `load` kN down on its top: 5/6
// of it in the rafters, 2/3 in the tie.
void addGable(Truss& truss, double load) {
    joint(truss, "D", 10, 0);
    joint(truss, "E", 18, 0);
    joint(truss, "F", 14, 3);
    member(truss, "D", "F");
    member(truss, "E", "F");
    member(truss, "D", "E");
    pin(truss, "D");
    roller(truss, "E");
    force(truss, "F", 0, -load);
}

bool isWithoutWords(const Truss& truss) {
    return trustSentences({englishPhrases(), truss}, solve(truss)).empty();
}

} // namespace

TEST_CASE("a flat arch is said to be close to a mechanism before any load stands on it") {
    for (const bool isIndeterminate : {false, true}) {
        CAPTURE(isIndeterminate);
        const Truss truss = isIndeterminate ? thriceHeldArch(1e-7) : flatArch(1e-7);
        const Solution solution = solve(truss);
        REQUIRE(solution.solved);
        CHECK(solution.trust.joint == JointId{2});
        CHECK(solution.trust.error == 0);
        CHECK_THAT(resultsTextOf(truss), ContainsSubstring("Close to a mechanism at joint C"));
    }
    // Joint C: 2·F·sin = 1, sin = 1e-7.
    CHECK_THAT(solve(flatArch(1e-7)).trust.amplification, WithinRel(0.5e7, 1e-6));
}

TEST_CASE("a flat arch is found beside a truss that bears all the loads") {
    for (const bool isIndeterminate : {false, true}) {
        CAPTURE(isIndeterminate);
        Truss truss = isIndeterminate ? thriceHeldArch(1e-7) : flatArch(1e-7);
        addGable(truss, 24);
        const Solution solution = solve(truss);
        REQUIRE(solution.solved);
        CHECK_THAT(resultsTextOf(truss), ContainsSubstring("Close to a mechanism at joint C"));
        // Nothing acts on the arch, so that its weakness affects no figure.
        CHECK(solution.trust.error < 1e-12);
        CHECK_THAT(solution.forces[memberAt(truss, "D", "E")], WithinRel(16e3, 1e-12));
    }
}

TEST_CASE("supports that all but let a truss turn are found without loads, by their reactions") {
    Truss truss = roof();
    truss.loads.clear();
    truss.supports[1].reaction = 1e-5; // degrees: its line passes the pin, 6 m away, at 1e-6 m
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    // 1 N up at B, 6 m from the pin, against an arm of 6 m · sin 1e-5°.
    CHECK_THAT(solution.trust.amplification,
               WithinRel(1 / std::sin(1e-5 * std::numbers::pi / 180), 1e-6));
    CHECK_THAT(resultsTextOf(truss), ContainsSubstring("Close to a mechanism at joint B"));
}

TEST_CASE("two rollers of nearly one direction at a joint get right reactions, and a word") {
    constexpr double kDegrees = 1e-5;
    Truss truss = crossedSquare();
    roller(truss, "B", 90);
    roller(truss, "B", 90 + kDegrees);
    force(truss, "B", 10, 0);
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    // Only the inclined roller has a horizontal reaction at B: its share of 10 kN, relative to the
    // bar AB and everything parallel to it, follows from statics: A + B = 10 kN.
    const double slope = kDegrees * std::numbers::pi / 180;
    const double atB = -solution.reactions[3] * std::sin(slope);
    CHECK_THAT(atB + solution.reactions[0], WithinRel(-10e3, 1e-6));
    CHECK(std::abs(solution.reactions[3]) > 1e6 * std::abs(solution.forces[0]));
    CHECK_THAT(resultsTextOf(truss), ContainsSubstring("can cause a reaction of"));
}

TEST_CASE("sound trusses get no word of mechanisms, loaded or not") {
    int seen = 0;
    for (std::uint64_t seed = 0; seed < 250; ++seed) {
        for (Truss truss : {randomDeterminateTruss(seed), randomIndeterminateTruss(seed)}) {
            CAPTURE(seed);
            CHECK(isWithoutWords(truss));
            truss = withSections(truss, seed);
            addRandomLoads(truss, seed);
            CHECK(isWithoutWords(truss));
            ++seen;
        }
    }
    CHECK(seen == 500);
    for (const Web web : {Web::Pratt, Web::Warren, Web::Double}) {
        CHECK(isWithoutWords(withSections(stripTruss(web, panelsFor(web, 1000)), 1)));
    }
}

TEST_CASE("no example is said to be close to a mechanism") {
    for (const Truss& truss : exampleTrusses()) {
        CAPTURE(truss.title);
        CHECK_FALSE(isCloseToMechanism(solve(truss).trust));
    }
}

TEST_CASE("how close a flat truss is to a mechanism is near what the dense inverse says") {
    int close = 0;
    for (std::uint64_t seed = 0; seed < 100; ++seed) {
        Truss truss = randomDeterminateTruss(seed);
        for (Joint& each : truss.joints) {
            each.at.y *= 1e-5;
        }
        const auto inverse = denseInverse(denseEquilibrium(truss));
        const Solution solution = solve(truss);
        if (!inverse || solution.status != Status::Determinate) {
            continue;
        }
        CAPTURE(seed);
        const double largest = largestEntry(*inverse);
        if (largest < 3e5) { // only found reliably above 1e5
            continue;
        }
        ++close;
        CHECK(isCloseToMechanism(solution.trust));
        CHECK(solution.trust.amplification <= largest * (1 + 1e-6));
        CHECK(solution.trust.amplification >= largest / 2);
    }
    CHECK(close > 30);
}

TEST_CASE("forces smaller than their errors are neither tension nor compression, and it is said") {
    // The rounding of coordinates near 1e4 m, about 1e-12 m, is 1e-4 of a rise of 1e-8 m: the 5e7
    // kN in the arch are off by that much, and by no less than the resulting 5e3 kN is any force
    // judged together with them.
    Truss truss = flatArch(1e-8);
    force(truss, "C", 0, -1);
    addGable(truss, 24);
    shift(truss, {0, 1e4});
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    CHECK(senseOf(solution, MemberId{0}) == Sense::Compression);
    CHECK(senseOf(solution, MemberId{static_cast<int>(memberAt(truss, "D", "E"))}) == Sense::Zero);
    CHECK_THAT(resultsTextOf(truss), ContainsSubstring("The forces in 3 members, DF among them"));
    CHECK_THAT(resultsTextOf(truss),
               ContainsSubstring("whether they are tension or compression is open"));
}

TEST_CASE("displacements carry the figures that rounding leaves, and results say how many") {
    Truss truss = gable();
    giveSections(truss);
    Solution solution = solve(truss);
    REQUIRE(solution.displaced);
    const std::string all = writeResults(englishPhrases(), truss, solution);
    CHECK_THAT(all, !ContainsSubstring("displacementFigures"));
    CHECK_THAT(resultsText({englishPhrases(), truss}, solution),
               !ContainsSubstring("figures of the largest displacement"));
    // Tie AB: 16 kN · 8 m / 210e6 N = 0.609523809524 mm to the right at B; C moves 0.7…1 mm down,
    // so that a bound of 9e-4 leaves thousandths of a millimetre.
    solution.trust.displacementError = 9e-4;
    const std::string text = resultsText({englishPhrases(), truss}, solution);
    CHECK_THAT(text, ContainsSubstring("Rounding leaves 3 figures of the largest displacement"));
    CHECK_THAT(resultsHtml({englishPhrases(), truss}, solution),
               ContainsSubstring("Rounding leaves 3 figures of the largest displacement"));
    CHECK_THAT(all, ContainsSubstring("\"ux\": 0.609523809524"));
    const std::string json = writeResults(englishPhrases(), truss, solution);
    CHECK_THAT(json, ContainsSubstring("\"displacementFigures\": 3"));
    CHECK_THAT(json, ContainsSubstring("\"ux\": 0.61,"));
}

TEST_CASE("a movement smaller than its error is none") {
    // An arch of rise 1e-7 sinks by F·L/(EA·sin²), about 1e14 times the elongation of its bars;
    // beside it a triangle of ordinary size moves 1e-13 as much, of which no digit lies above the
    // bound.
    Truss truss = flatArch(1e-7);
    force(truss, "C", 0, -1);
    addGable(truss, 0.001);
    giveSections(truss);
    const Solution solution = solve(truss);
    REQUIRE(solution.displaced);
    const double bound = movementBound(solution);
    for (const Vec2 move : solution.displacements) {
        CHECK((move.x == 0 || std::abs(move.x) > bound));
        CHECK((move.y == 0 || std::abs(move.y) > bound));
    }
    CHECK(solution.displacements[jointAt(truss, "E")] == Vec2{});
}

TEST_CASE("displacements that are not given for rounding are not said to lack sections") {
    Truss truss = flatArch(1e-8);
    force(truss, "C", 0, -1);
    giveSections(truss);
    shift(truss, {0, 3e4});
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    REQUIRE_FALSE(solution.displaced);
    CHECK_THAT(resultsTextOf(truss),
               ContainsSubstring("fewer than three figures of the displacements"));
    CHECK_THAT(resultsTextOf(truss), !ContainsSubstring("needs a section"));
}

TEST_CASE("wider arithmetic is not called where only the coordinates are too coarse") {
    Truss truss = crossedSquare();
    roller(truss, "B");
    force(truss, "C", 5, -10);
    // Half a unit in the last place of 1e8 m is 7e-9 m, 2e-9 of the sides: above kTrusted.
    shift(truss, {1e8, 1e8});
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    CHECK(solution.trust.error > 1e-9);
    CHECK_FALSE(solution.trust.wide);
}

TEST_CASE("joints that a stiff member moves are not said to rest, however soft the others are") {
    // AC and BC carry nothing and keep their lengths, AB elongates by d. With C at (x, h),
    // displaced by (u, v): x·u + h·v = 0 and (4 − x)·(d − u) + h·v = 0.
    Truss truss = triangle(1.5);
    truss.joints[2].at.y = 3e-4;
    truss.materials.push_back({"steel", 210e3, {}, {}, {}, {}});
    truss.sections.push_back({"bar", "steel", 1, {}, "", {}, {}});
    truss.sections.push_back({"stiff", "steel", 1e12, {}, "", {}, {}});
    for (Member& each : truss.members) {
        each.section = "bar";
    }
    truss.members[memberAt(truss, "A", "B")].section = "stiff";
    force(truss, "B", 18, -13);
    const Solution solution = solve(truss);
    REQUIRE(solution.displaced);
    const double d = 18e3 * 4 / (210e3 * 1e12);
    const Vec2 atC = solution.displacements[jointAt(truss, "C")];
    CHECK_THAT(atC.y, WithinRel(-1.5 * (2.5 / 4 * d) / 3e-4, 1e-3));
    CHECK_THAT(resultsTextOf(truss), !ContainsSubstring("No joint moves"));
}
