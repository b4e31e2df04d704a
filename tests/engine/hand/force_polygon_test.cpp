#include "hand/polygon/force_polygon.hpp"
#include "report/derivation/force_polygon_text.hpp"

#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>
#include <set>

using namespace gusset;
using namespace gusset::support;

namespace {

// The gable of small_truss.hpp. Clockwise from the left: space A below, B on the left, C on the
// right; 1 inside.

ForcePolygon polygonOf(const Truss& truss) { return forcePolygon(truss, {}, solve(truss)); }

const PolygonSpace& spaceNamed(const ForcePolygon& polygon, const std::string& name) {
    for (const PolygonSpace& space : polygon.spaces) {
        if (space.name == name) {
            return space;
        }
    }
    FAIL("no space " << name);
    return polygon.spaces.front();
}

Vec2 runOf(const ForcePolygon& polygon, const PolygonLine& line) {
    return polygon.spaces[static_cast<std::size_t>(line.to)].point -
           polygon.spaces[static_cast<std::size_t>(line.from)].point;
}

bool near(Vec2 a, Vec2 b, double small) { return length(a - b) <= small; }

// The force of each line on the joints that it acts on must leave every joint in balance.
double worstGap(const Truss& truss, const Solution& solution, const ForcePolygon& polygon) {
    double worst = 0;
    for (const PolygonLine& line : polygon.lines) {
        const Vec2 run = runOf(polygon, line);
        if (line.member.valid()) {
            const double force = solution.forces[line.member.at()] / 1000; // kN
            const Vec2 along = memberVector(truss, line.member);
            worst = std::max({worst, std::abs(length(run) - std::abs(force)),
                              std::abs(cross(run, along)) / length(along),
                              std::abs(line.force - force)});
        } else {
            const Vec2 outside = line.reaction ? solution.jointReactions[line.joint.at()]
                                               : solution.loads[line.joint.at()];
            worst = std::max(worst, length(run - 1e-3 * outside));
        }
    }
    return worst;
}

} // namespace

TEST_CASE("the polygon of a gable has its four points where they are drawn by hand") {
    const ForcePolygon polygon = polygonOf(gable());
    REQUIRE(polygon.refusal == PolygonRefusal::None);
    REQUIRE(polygon.spaces.size() == 4);
    // From a, up 12 to b (reaction at A), down 24 to c (load), up 12 back to a (reaction at B);
    // 1 lies left of a by the tie's 16.
    CHECK(near(spaceNamed(polygon, "A").point, {0, 0}, 1e-12));
    CHECK(near(spaceNamed(polygon, "B").point, {0, 12}, 1e-12));
    CHECK(near(spaceNamed(polygon, "C").point, {0, -12}, 1e-12));
    CHECK(near(spaceNamed(polygon, "1").point, {-16, 0}, 1e-12));
}

TEST_CASE("loads and reactions are drawn first and close by themselves") {
    const ForcePolygon polygon = polygonOf(gable());
    REQUIRE(polygon.lines.size() == 6);
    Vec2 sum;
    for (std::size_t i = 0; i < 3; ++i) {
        CHECK_FALSE(polygon.lines[i].member.valid());
        sum = sum + runOf(polygon, polygon.lines[i]);
    }
    CHECK(near(sum, {}, 1e-12));
    CHECK(polygon.lines[0].reaction);
    CHECK_FALSE(polygon.lines[1].reaction);
}

TEST_CASE("the name of a space stands in it on the board") {
    const ForcePolygon polygon = polygonOf(gable());
    CHECK(near(spaceNamed(polygon, "1").seat, {4, 1}, 1e-12)); // mean of the members' middles
    CHECK(spaceNamed(polygon, "A").seat.y < 0);
    CHECK(spaceNamed(polygon, "B").seat.x < 2);
    CHECK(spaceNamed(polygon, "C").seat.x > 6);
}

TEST_CASE(
    "every line is as long as its force and parallel to it, of any truss that has a polygon") {
    int drawn = 0;
    for (std::uint64_t seed = 0; seed < 600; ++seed) {
        const Truss truss = randomDeterminateTruss(seed);
        const Solution solution = solve(truss);
        const ForcePolygon polygon = forcePolygon(truss, {}, solution);
        if (polygon.refusal != PolygonRefusal::None) {
            CHECK(polygon.lines.empty());
            continue;
        }
        ++drawn;
        INFO("seed " << seed);
        REQUIRE(worstGap(truss, solution, polygon) <= 1e-9 * solution.largest / 1000);
        std::set<int> members;
        for (const PolygonLine& line : polygon.lines) {
            members.insert(line.member.index);
        }
        REQUIRE(members.size() >= truss.members.size()); // each once, plus loads, counted under −1
        // Euler: joints − members + spaces = 2, where the outside counts once.
        const auto inside = std::count_if(polygon.spaces.begin(), polygon.spaces.end(),
                                          [](const PolygonSpace& space) { return !space.outside; });
        REQUIRE(static_cast<std::size_t>(inside) + 1 + truss.joints.size() ==
                truss.members.size() + 2);
    }
    CHECK(drawn > 100);
}

TEST_CASE("members that cross without a joint have no polygon, and are named") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 4, 0);
    joint(truss, "C", 4, 3);
    joint(truss, "D", 0, 3);
    members(truss, {"AB", "BC", "AC", "BD"});
    pin(truss, "A");
    pin(truss, "D");
    force(truss, "C", 0, -5);
    const ForcePolygon polygon = polygonOf(truss);
    CHECK(polygon.refusal == PolygonRefusal::CrossingMembers);
    CHECK(polygon.members == std::vector<MemberId>{MemberId{2}, MemberId{3}});
}

TEST_CASE("a load inside the truss has no polygon, and its joint is named") {
    Truss truss = gable();
    joint(truss, "D", 4, 1);
    member(truss, "A", "D");
    member(truss, "D", "B");
    truss.members.erase(truss.members.begin() + 2); // the tie: A–D–B takes its place,
    member(truss, "C", "D");                        // hung from the ridge
    member(truss, "A", "B");                        // then closed below again, and the left
    truss.members.erase(truss.members.begin());     // rafter left out
    force(truss, "D", 0, -6);
    const ForcePolygon outside = polygonOf(truss);
    CHECK(outside.refusal == PolygonRefusal::None); // D lies on the edge where the rafter was
    joint(truss, "E", -3, 3);                       // closed again by two members around E
    member(truss, "A", "E");
    member(truss, "E", "C");
    const ForcePolygon inside = polygonOf(truss);
    CHECK(inside.refusal == PolygonRefusal::ForceInside);
    CHECK(inside.joint == findJoint(truss, "D"));
}

TEST_CASE("a truss without a working has no polygon") {
    Truss truss = gable();
    truss.members.pop_back();
    CHECK(polygonOf(truss).refusal == PolygonRefusal::NoWorking);
}

TEST_CASE("the polygon in words names its lines by the points of two spaces") {
    const Truss truss = gable();
    const std::string text = forcePolygonText({englishPhrases(), truss}, polygonOf(truss));
    CHECK(text.find("  a\u2013b    reaction at A       12.00\n") != std::string::npos);
    CHECK(text.find("  b\u20131    AC                  20.00   compression\n") !=
          std::string::npos);
    CHECK(text.find("  a\u20131    AB                  16.00   tension\n") != std::string::npos);
}
