#include "exchange/drawings/drawing_file.hpp"
#include "exchange/drawings/dxf_reader.hpp"
#include "exchange/drawings/traced.hpp"
#include "support/drawing/written_drawing.hpp"
#include "support/english.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cmath>
#include <cstdio>
#include <initializer_list>
#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

Traced tracedLines(std::initializer_list<DrawnLine> lines, const DrawingWishes& wishes = {}) {
    LinesFound found;
    found.lines = lines;
    found.unit = LengthUnit::m;
    const Outcome<Traced> traced = trussOfLines(found, wishes);
    REQUIRE(traced);
    return traced.value();
}

std::string notesOf(const Issues& notes) {
    std::string all;
    for (const Issue& note : notes) {
        all += english(note) + "\n";
    }
    return all;
}

bool says(const Traced& traced, const std::string& words) {
    const std::string all = notesOf(traced.notes);
    INFO(all);
    return all.find(words) != std::string::npos;
}

// A-B-C in a row of 2 m each, D above B, 1.5 m high
const std::initializer_list<DrawnLine> kRoofLines{
    {{0, 0}, {4, 0}}, {{0, 0}, {2, 1.5}}, {{4, 0}, {2, 1.5}}, {{2, 0}, {2, 1.5}}};

struct Tally {
    int read = 0;
    int joints = 0;
    int members = 0;
    int tooClose = 0; // for a tolerance
};

Vec2 cornerOf(const Truss& truss) { return extent(truss).low; }

// Two ends of one joint may be twice `off` apart, so that the tolerance is twice as large.
template <class Write>
Tally readBack(const Write& write) {
    Tally tally;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const Truss truss = asDrawn(randomDeterminateTruss(seed));
        Random random(seed);
        const double clearance = clearanceOf(truss);
        if (clearance < 0.02) {
            ++tally.tooClose;
            continue;
        }
        const double tolerance = clearance / 5;
        const double off = 0.499 * tolerance;
        write(truss, tolerance, off, random, seed);
        ++tally.read;
        tally.joints += static_cast<int>(truss.joints.size());
        tally.members += static_cast<int>(truss.members.size());
    }
    return tally;
}

void print(const char* kind, const Tally& tally) {
    std::printf("%s of random trusses, shuffled and disturbed, read back alike: %d (%d joints, %d "
                "members); left out, as joints stand too close: %d\n",
                kind, tally.read, tally.joints, tally.members, tally.tooClose);
    CHECK(tally.read > 150);
}

} // namespace

TEST_CASE("A line whose end lies on another divides it, and joints are lettered in reading order") {
    const Traced traced = tracedLines(kRoofLines);
    const Truss& truss = traced.truss;
    REQUIRE(truss.joints.size() == 4);
    CHECK(truss.joints[0] == Joint{"A", {0, 0}, {}});
    CHECK(truss.joints[1] == Joint{"B", {2, 0}, {}}); // below C
    CHECK(truss.joints[2] == Joint{"C", {2, 1.5}, {}});
    CHECK(truss.joints[3] == Joint{"D", {4, 0}, {}});
    CHECK(truss.members.size() == 5);
    CHECK(says(traced, "the line from joint A to joint D passes joint B and is divided there"));
    CHECK(says(traced, "the file says nothing of supports"));
    CHECK(truss.supports.empty());
}

TEST_CASE("The truss is the same whatever the order and direction of the lines") {
    const Truss first = tracedLines(kRoofLines).truss;
    const Truss other =
        tracedLines({{{2, 1.5}, {2, 0}}, {{2, 1.5}, {4, 0}}, {{4, 0}, {0, 0}}, {{2, 1.5}, {0, 0}}})
            .truss;
    CHECK(first == other);
}

TEST_CASE("Lines that cross without an end in the crossing pass, and it is told where") {
    // a square of 2 m with both diagonals, which cross in its middle
    const Traced traced = tracedLines({{{0, 0}, {2, 0}},
                                       {{2, 0}, {2, 2}},
                                       {{2, 2}, {0, 2}},
                                       {{0, 2}, {0, 0}},
                                       {{0, 0}, {2, 2}},
                                       {{0, 2}, {2, 0}}});
    CHECK(traced.truss.joints.size() == 4);
    CHECK(traced.truss.members.size() == 6);
    CHECK(says(traced, "members AD and BC cross at (1, 1) without a joint"));
}

TEST_CASE("A mark in a crossing makes a joint of it") {
    LinesFound found;
    found.lines = {{{0, 0}, {2, 2}}, {{0, 2}, {2, 0}}};
    found.marks = {{1, 1}, {9, 9}};
    const Outcome<Traced> traced = trussOfLines(found, {});
    REQUIRE(traced);
    CHECK(traced.value().truss.joints.size() == 5);
    CHECK(traced.value().truss.members.size() == 4);
    CHECK(says(traced.value(), "marks left out, as they lie on no line: 1, the first at (9, 9)"));
}

TEST_CASE("What is doubtful in a drawing is told with its place") {
    SECTION("a gap between two joints") {
        // 10 m wide: the tolerance is 10 mm, and the two ends are 30 mm apart
        const Traced traced =
            tracedLines({{{0, 0}, {5, 0}}, {{5, 0.03}, {10, 0}}, {{0, 0}, {10, 0.5}}});
        CHECK(says(traced, "joints B at (5, 0) and C are only 0.03 m apart and not joined"));
    }
    SECTION("a member that stops short of another") {
        const Traced traced = tracedLines(
            {{{0, 0}, {10, 0}}, {{5, 0.04}, {5, 3}}, {{0, 0}, {5, 3}}, {{10, 0}, {5, 3}}});
        CHECK(says(traced, "joint B at (5, 0.04) stops 0.04 m short of member AD"));
    }
    SECTION("a member that ends alone") {
        // the post stops half a metre above the tie, a third of its length
        const Traced traced =
            tracedLines({{{0, 0}, {8, 0}}, {{0, 0}, {4, 2}}, {{4, 2}, {8, 0}}, {{4, 2}, {4, 0.5}}});
        CHECK(says(traced, "member BC ends alone in joint B at (4, 0.5): unless a support"));
    }
    SECTION("a short member") {
        const Traced traced = tracedLines({{{0, 0}, {5, 0}},
                                           {{5, 0}, {5.2, 0}},
                                           {{5.2, 0}, {10, 0}},
                                           {{0, 0}, {5, 4}},
                                           {{5, 4}, {10, 0}}});
        CHECK(says(traced, "member BD at (5.1, 0) is only 0.2 m long"));
    }
    SECTION("a member drawn twice, once as part of a longer line") {
        const Traced traced =
            tracedLines({{{0, 0}, {4, 0}}, {{0, 0}, {2, 0}}, {{0, 0}, {2, 2}}, {{2, 2}, {4, 0}}});
        CHECK(says(traced, "member AB is drawn 2 times: it counts once"));
        CHECK(traced.truss.members.size() == 4);
    }
    SECTION("the two edges of one member") {
        const Traced traced = tracedLines({{{0, 0}, {4, 0}}, {{0, 0.1}, {4, 0.1}}});
        CHECK(says(traced, "run side by side, 0.1 m apart"));
    }
    SECTION("a lone line, and a part that hangs apart") {
        const Traced traced = tracedLines({{{0, 0}, {4, 0}},
                                           {{0, 0}, {2, 2}},
                                           {{2, 2}, {4, 0}},
                                           {{8, 0}, {9, 3}},
                                           {{12, 0}, {14, 0}},
                                           {{14, 0}, {13, 2}}});
        CHECK(
            says(traced,
                 "the lines fall into 3 parts that touch nowhere; members of the largest: 3 of 6"));
        CHECK(says(traced, "member DE at (8, 0) touches no other"));
        CHECK(says(traced, "what hangs together around joint F at (12, 0), members: 2"));
    }
    SECTION("a line within the tolerance") {
        const Traced traced =
            tracedLines({{{0, 0}, {4, 0}}, {{4, 0}, {4.001, 0}}, {{4.001, 0}, {2, 3}}});
        CHECK(says(traced, "the line at (4, 0) is no longer than the tolerance: it is left out"));
        CHECK(traced.truss.joints.size() == 3);
    }
    SECTION("ends in a row, each near the next") {
        const Traced traced = tracedLines({{{0, 0}, {10, 0}},
                                           {{10.009, 0}, {5, 3}},
                                           {{10.018, 0}, {5, 6}},
                                           {{10.027, 0}, {0, 6}}},
                                          {{}, 0.01, {}, {}});
        CHECK(says(traced, "lie up to 0.027 m apart, each within the tolerance of the next"));
    }
    SECTION("and nothing is doubtful about a sound truss") {
        const Traced traced = tracedLines({{{0, 0}, {2, 0}}, {{2, 0}, {1, 1}}, {{1, 1}, {0, 0}}});
        for (const Issue& note : traced.notes) {
            INFO(english(note));
            CHECK(note.code != IssueCode::Suspicious);
        }
    }
}

TEST_CASE("Millimetres taken for metres are suspected, and typed ones become metres") {
    LinesFound found;
    found.lines = {
        {{0, 0}, {24'000, 0}}, {{0, 0}, {12'000, 4'500}}, {{12'000, 4'500}, {24'000, 0}}};
    const Outcome<Traced> plain = trussOfLines(found, {});
    REQUIRE(plain);
    CHECK(says(plain.value(), "the file does not say its unit: m is taken"));
    CHECK(says(plain.value(), "the truss would be 24000 m across"));
    const Outcome<Traced> typed = trussOfLines(found, {LengthUnit::mm, {}, {}, {}});
    REQUIRE(typed);
    CHECK(typed.value().truss.units.length == LengthUnit::m);
    CHECK(typed.value().truss.joints[1].at == Vec2{12, 4.5});
    CHECK_FALSE(says(typed.value(), "would be"));
    found.unit = LengthUnit::m;
    const Outcome<Traced> overruled = trussOfLines(found, {LengthUnit::mm, {}, {}, {}});
    REQUIRE(overruled);
    CHECK(says(overruled.value(), "the file says that it is in m: the typed unit mm is taken"));
}

TEST_CASE("A typed width scales a drawing, from its lower left corner on") {
    LinesFound found; // 300 units for 24 m: 0.08 m each
    found.lines = {{{50, 20}, {350, 20}}, {{50, 20}, {200, 95}}, {{200, 95}, {350, 20}}};
    const Outcome<Traced> traced = trussOfLines(found, {{}, {}, 24, {}});
    REQUIRE(traced);
    CHECK(traced.value().truss.joints[0].at == Vec2{0, 0});
    CHECK(traced.value().truss.joints[1].at == Vec2{12, 6});
    CHECK(says(traced.value(), "one unit of the drawing is 0.08 m"));
}

TEST_CASE("Drawings without lines, with too many, or within the tolerance are refused with words") {
    LinesFound none;
    CHECK(english(trussOfLines(none, {}).issues().front()).find("no straight lines") !=
          std::string::npos);
    LinesFound many;
    many.lines.assign(kMostDrawnLines + 1, {{0, 0}, {1, 0}});
    CHECK(english(trussOfLines(many, {}).issues().front()).find("at most 10000 are read") !=
          std::string::npos);
    LinesFound small;
    small.lines = {{{0, 0}, {1, 0}}};
    CHECK(english(trussOfLines(small, {{}, 2, {}, {}}).issues().front())
              .find("no line is longer than the tolerance of 2") != std::string::npos);
    LinesFound spot;
    spot.lines = {{{1, 1}, {1, 1}}};
    CHECK_FALSE(trussOfLines(spot, {}));
    LinesFound upright;
    upright.lines = {{{1, 1}, {1, 5}}};
    CHECK(english(trussOfLines(upright, {{}, {}, 3, {}}).issues().front()).find("no width") !=
          std::string::npos);
}

TEST_CASE(
    "Random trusses drawn as DXF, in millimetres or metres, have the same joints and members") {
    print("DXF", readBack([](const Truss& truss, double tolerance, double off, Random& random,
                             std::uint64_t seed) {
              const bool isMm = random.oneIn(2);
              const double scale = isMm ? 1000 : 1;
              const std::string text =
                  strokesAsDxf(drawnStrokes(truss, off, random), scale, random);
              DrawingWishes wishes;
              wishes.unit = isMm ? LengthUnit::mm : LengthUnit::m;
              wishes.tolerance = tolerance * scale;
              const Outcome<Traced> traced = readDrawing(text, wishes);
              REQUIRE(traced);
              INFO("seed " << seed << "\n" << notesOf(traced.value().notes));
              CHECK(differenceOf(truss, traced.value().truss, {}, tolerance) == "");
          }));
}

TEST_CASE("Random trusses drawn as SVG have the same joints and members") {
    print("SVG", readBack([](const Truss& truss, double tolerance, double off, Random& random,
                             std::uint64_t seed) {
              constexpr double kScale = 40; // user units for a metre
              const std::string text =
                  strokesAsSvg(drawnStrokes(truss, off, random), kScale, random);
              DrawingWishes wishes;
              wishes.tolerance = tolerance * kScale;
              const Outcome<Traced> traced = readDrawing(text, wishes);
              REQUIRE(traced);
              Truss found = traced.value().truss;
              for (Joint& joint : found.joints) {
                  joint.at = (1 / kScale) * joint.at;
              }
              INFO("seed " << seed << "\n" << notesOf(traced.value().notes));
              CHECK(differenceOf(truss, found, cornerOf(truss), 2 * tolerance) == "");
          }));
}
