#include "statics/moving/load_paths.hpp"

#include "model/truss/member_index.hpp"
#include "model/validate/path_faults.hpp"
#include "report/results/influence_text.hpp"

#include "support/english.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;

namespace {

std::vector<JointId> named(const Truss& truss, const std::vector<const char*>& labels) {
    std::vector<JointId> joints;
    for (const char* label : labels) {
        joints.push_back(findJoint(truss, label));
    }
    return joints;
}

std::string through(const Truss& truss, const std::vector<const char*>& labels) {
    return pathName(truss, pathThrough(truss, named(truss, labels)).value());
}

std::string whyNotThrough(const Truss& truss, const std::vector<const char*>& labels) {
    const auto path = pathThrough(truss, named(truss, labels));
    REQUIRE_FALSE(path);
    return english(path.issues().front().says);
}

//     C---E        two panels of 3 m, 2 m high, with end posts that lean; D stands below C and E
//    /|\ /|\       at a third of the way
//   A-B-D-F-G
Truss bridge() {
    Truss truss;
    joint(truss, "G", 8, 0); // not drawn from left to right
    joint(truss, "C", 2, 2);
    joint(truss, "A", 0, 0);
    joint(truss, "D", 4, 0);
    joint(truss, "B", 2, 0);
    joint(truss, "E", 6, 2);
    joint(truss, "F", 6, 0);
    for (const auto& [a, b] : {std::pair{"B", "A"},
                               {"B", "D"},
                               {"F", "D"},
                               {"F", "G"},
                               {"C", "A"},
                               {"C", "E"},
                               {"E", "G"},
                               {"B", "C"},
                               {"E", "F"},
                               {"C", "D"},
                               {"D", "E"}}) {
        member(truss, a, b);
    }
    pin(truss, "A");
    roller(truss, "G");
    return truss;
}

} // namespace

TEST_CASE(
    "the bottom chord is the lowest way across, the top chord with its end posts the highest") {
    CHECK(pathName(bridge(), lowestPath(bridge())) == "A–B–D–F–G");
    CHECK(pathName(bridge(), highestPath(bridge())) == "A–C–E–G");
}

TEST_CASE("between upright ends the chords are found too, at either height") {
    const Truss truss = stripTruss(Web::Pratt, 6);
    CHECK(lowestPath(truss) == bottomChord(truss, 6));
    const std::vector<JointId> top = highestPath(truss);
    REQUIRE(top.size() == 7);
    for (const JointId joint : top) {
        CHECK(truss.joints[joint.at()].label[0] == 'T');
    }
}

TEST_CASE("where no chain leads across there is no path, nor in an empty truss") {
    Truss apart;
    for (const char* label : {"A", "B", "C", "D"}) {
        joint(apart, label, 2.0 * (label[0] - 'A'), 0);
    }
    member(apart, "A", "B");
    member(apart, "C", "D");
    CHECK(lowestPath(apart).empty());
    CHECK(highestPath(apart).empty());
    CHECK(lowestPath(Truss{}).empty());
}

TEST_CASE("picked joints are taken from left to right, and the ends of a straight line will do") {
    CHECK(through(bridge(), {"E", "A", "C"}) == "A–C–E");
    CHECK(through(bridge(), {"G", "A"}) == "A–B–D–F–G");
    CHECK(through(bridge(), {"B", "F", "G"}) == "B–D–F–G");
}

TEST_CASE("a path that nothing can travel is refused with the reason") {
    CHECK(whyNotThrough(bridge(), {"A"}).find("at least two joints") != std::string::npos);
    CHECK(whyNotThrough(bridge(), {"B", "C"}).find("upright") != std::string::npos);
    CHECK(whyNotThrough(bridge(), {"B", "E"}).find("no member joins B and E") != std::string::npos);
}

TEST_CASE("every path found in random trusses can be travelled, and none lies lower or higher") {
    int found = 0;
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        const Truss truss =
            seed % 2 ? randomIndeterminateTruss(seed) : randomDeterminateTruss(seed);
        const MemberIndex members(truss);
        const std::vector<JointId> low = lowestPath(truss);
        const std::vector<JointId> high = highestPath(truss);
        REQUIRE(low.empty() == high.empty());
        if (low.empty()) {
            continue;
        }
        ++found;
        const auto areaUnder = [&](const std::vector<JointId>& path) {
            double area = 0;
            for (std::size_t i = 1; i < path.size(); ++i) {
                const Vec2 a = truss.joints[path[i - 1].at()].at;
                const Vec2 b = truss.joints[path[i].at()].at;
                area += (b.x - a.x) * (a.y + b.y) / 2;
            }
            return area;
        };
        REQUIRE_FALSE(faultOfPath(truss, members, low, "path"));
        REQUIRE_FALSE(faultOfPath(truss, members, high, "path"));
        const Extent box = extent(truss);
        const double size = box.high.x - box.low.x + box.high.y - box.low.y;
        REQUIRE(areaUnder(low) <= areaUnder(high) + 1e-9 * size * size);
        for (const auto* path : {&low, &high}) {
            REQUIRE(truss.joints[path->front().at()].at.x <= box.low.x + 1e-9 * size);
            REQUIRE(truss.joints[path->back().at()].at.x >= box.high.x - 1e-9 * size);
        }
    }
    CHECK(found > 100);
}
