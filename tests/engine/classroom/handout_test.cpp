#include "report/classroom/joint_stubs.hpp"
#include "statics/equilibrium/structure.hpp"
#include "support/english.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;

namespace {

std::ptrdiff_t dashedLines(const Sketch& sketch) {
    return std::count_if(sketch.lines.begin(), sketch.lines.end(),
                         [](const SketchLine& line) { return line.dashed; });
}

} // namespace

TEST_CASE(
    "A free body to complete shows its members, its loads and its support, and nothing else") {
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        INFO("seed " << seed);
        const Truss truss = randomDeterminateTruss(seed);
        if (truss.joints.size() > 24) {
            continue; // not printed
        }
        const std::vector<Sketch> stubs = jointStubs({englishPhrases(), truss}, {});
        const std::vector<Vec2> loads = jointLoads(truss, EveryLoad{});
        REQUIRE(stubs.size() == truss.joints.size());
        for (std::size_t i = 0; i < stubs.size(); ++i) {
            const JointId joint{static_cast<int>(i)};
            const auto meets = std::count_if(
                truss.members.begin(), truss.members.end(),
                [&](const Member& member) { return member.a == joint || member.b == joint; });
            CHECK(dashedLines(stubs[i]) == meets);
            // Components that are 0.5 kN or more, as all loads are multiples of that.
            const std::size_t components =
                (std::fabs(loads[i].x) > 1 ? 1u : 0u) + (std::fabs(loads[i].y) > 1 ? 1u : 0u);
            CHECK(stubs[i].arrows.size() == components);
            CHECK(
                std::all_of(stubs[i].arrows.begin(), stubs[i].arrows.end(),
                            [](const SketchArrow& arrow) { return arrow.ink == SketchInk::Load; }));
            CHECK(stubs[i].words.size() == static_cast<std::size_t>(meets) + components);
            const auto supports =
                std::count_if(truss.supports.begin(), truss.supports.end(),
                              [&](const Support& support) { return support.joint == joint; });
            // The sign of each: three sides and the ground.
            CHECK(static_cast<std::ptrdiff_t>(stubs[i].lines.size()) - meets == 4 * supports);
        }
    }
}
