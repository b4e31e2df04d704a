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

// The gable of small_truss.hpp. Clockwise from the left: space P below, Q on the left, R on the
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
    // From p, up 12 to q (reaction at A), down 24 to r (load), up 12 back to p (reaction at B);
    // 1 lies left of p by the tie's 16.
    CHECK(near(spaceNamed(polygon, "P").point, {0, 0}, 1e-12));
    CHECK(near(spaceNamed(polygon, "Q").point, {0, 12}, 1e-12));
    CHECK(near(spaceNamed(polygon, "R").point, {0, -12}, 1e-12));
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
    CHECK(near(spaceNamed(polygon, "1").seat, {4, 1}, 1e-12));     // the centre of the triangle
    CHECK(near(spaceNamed(polygon, "P").seat, {4, -0.64}, 1e-12)); // 8 % of 8 m below the tie
    // The same off the middle of a rafter, across it.
    CHECK(near(spaceNamed(polygon, "Q").seat, {2 - 0.64 * 0.6, 1.5 + 0.64 * 0.8}, 1e-12));
    CHECK(near(spaceNamed(polygon, "R").seat, {6 + 0.64 * 0.6, 1.5 + 0.64 * 0.8}, 1e-12));
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

namespace {

// Where two lines through points, each in a direction, meet.
Vec2 meetingPoint(Vec2 a, Vec2 along, Vec2 b, Vec2 other) {
    const double t = cross(b - a, other) / cross(along, other);
    return a + t * along;
}

// What a step claims about the points that are known before it, from the truss alone.
std::string objectionToStep(const Truss& truss, const ForcePolygon& polygon,
                            const PolygonStep& step, std::set<int>& known) {
    const auto pointOf = [&](int space) {
        return polygon.spaces[static_cast<std::size_t>(space)].point;
    };
    const PolygonLine& first = polygon.lines[step.first];
    const double size = 1e-7 * (1 + std::abs(first.force) + length(pointOf(first.to)));
    if (step.move == PolygonMove::Outside) {
        for (std::size_t i = step.first; i < step.first + step.count; ++i) {
            known.insert(polygon.lines[i].to);
        }
        return polygon.lines[step.first].from == polygon.lines[step.first + step.count - 1].to
                   ? ""
                   : "loads and reactions do not close";
    }
    std::size_t checked = step.first; // lines from here on are checks
    if (step.move == PolygonMove::Meets) {
        const PolygonLine& second = polygon.lines[step.first + 1];
        if (!known.contains(first.from) || !known.contains(second.from) ||
            known.contains(first.to) || first.to != second.to) {
            return "a new point is not fixed by two known ones";
        }
        const Vec2 meets = meetingPoint(pointOf(first.from), memberVector(truss, first.member),
                                        pointOf(second.from), memberVector(truss, second.member));
        if (!near(meets, pointOf(first.to), 1e3 * size)) {
            return "the two lines meet elsewhere";
        }
        checked += 2;
    } else if (step.move == PolygonMove::Measured) {
        if (!known.contains(first.from) || known.contains(first.to)) {
            return "it is not measured from a known point to a new one";
        }
        checked += 1;
    }
    known.insert(first.to);
    for (std::size_t i = checked; i < step.first + step.count; ++i) {
        if (!known.contains(polygon.lines[i].from) || !known.contains(polygon.lines[i].to)) {
            return "a check joins a point that is not known";
        }
    }
    return "";
}

} // namespace

TEST_CASE("each new point of a polygon lies where two lines from known points meet, of any truss") {
    int met = 0;
    int measured = 0;
    for (std::uint64_t seed = 0; seed < 600; ++seed) {
        const Truss truss = randomDeterminateTruss(seed);
        const ForcePolygon polygon = polygonOf(truss);
        if (polygon.refusal != PolygonRefusal::None) {
            continue;
        }
        INFO("seed " << seed);
        std::set<int> known{0};
        std::size_t lines = 0;
        for (const PolygonStep& step : polygon.steps) {
            REQUIRE(step.first == lines);
            lines += step.count;
            REQUIRE(objectionToStep(truss, polygon, step, known) == "");
            met += step.move == PolygonMove::Meets ? 1 : 0;
            measured += step.move == PolygonMove::Measured ? 1 : 0;
        }
        REQUIRE(lines == polygon.lines.size());
    }
    CHECK(met > 300);
    CHECK(measured < met / 5);
}

TEST_CASE("a simple truss is drawn without measuring a force of the working") {
    for (const Form form : {Form::Simple, Form::Cantilever}) {
        for (std::uint64_t seed = 0; seed < 200; ++seed) {
            const ForcePolygon polygon = polygonOf(randomDeterminateTruss(form, seed));
            for (const PolygonStep& step : polygon.steps) {
                INFO("form " << static_cast<int>(form) << ", seed " << seed);
                REQUIRE(step.move != PolygonMove::Measured);
            }
        }
    }
}

TEST_CASE("no space has the name of a joint, nor has a point of the polygon") {
    const auto namesFor = [](std::vector<std::string> labels) {
        Truss truss = gable();
        for (std::size_t i = 0; i < labels.size(); ++i) {
            truss.joints[i].label = labels[i];
        }
        std::string names;
        for (const PolygonSpace& space : polygonOf(truss).spaces) {
            names += space.name + " ";
        }
        return names;
    };
    CHECK(namesFor({"A", "B", "C"}) == "P Q R 1 ");
    CHECK(namesFor({"P", "q", "S"}) == "R T U 1 ");
    CHECK(namesFor({"1", "2", "3"}) == "A B C D ");
    CHECK(namesFor({"L0", "L1", "U0"}) == "P Q R 1 ");
}

TEST_CASE("at a joint with a load and a reaction, the forces follow each other clockwise") {
    Truss truss = gable();
    force(truss, "A", 0, -3); // above its support: first the reaction, below, then the load
    force(truss, "B", 0, -3); // on the right: first the load
    const ForcePolygon polygon = polygonOf(truss);
    REQUIRE(polygon.lines.size() == 8);
    CHECK(polygon.lines[0].reaction);
    CHECK_FALSE(polygon.lines[1].reaction);
    CHECK(polygon.lines[3].joint == findJoint(truss, "B"));
    CHECK_FALSE(polygon.lines[3].reaction);
    CHECK(polygon.lines[4].reaction);
    // The space between the two at A has no member, and its letter stands beside A.
    const PolygonSpace& between = spaceNamed(polygon, "Q");
    CHECK(between.seat.x < 0);
    CHECK(length(between.seat - truss.joints[0].at) < 1);
}

TEST_CASE("the polygon in words names its lines by the points of two spaces") {
    const Truss truss = gable();
    const std::string text = forcePolygonText({englishPhrases(), truss}, polygonOf(truss));
    CHECK(text.find("  p\u2013q    reaction at A       12.00\n") != std::string::npos);
    CHECK(text.find("  q\u20131    AC                  20.00   compression\n") !=
          std::string::npos);
    CHECK(text.find("  p\u20131    AB                  16.00   tension\n") != std::string::npos);
    CHECK(text.find("clockwise round the truss: p\u2013q, q\u2013r and r\u2013p. They end where "
                    "they began.\n") != std::string::npos);
    CHECK(text.find("Through q draw parallel to AC, through r parallel to CB: the two lines meet "
                    "at 1.\n") != std::string::npos);
    CHECK(text.find("The line p\u20131 joins two known points: that it is parallel to AB is a "
                    "check.\n") != std::string::npos);
}
