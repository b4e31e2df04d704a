// Mechanisms under loads that happen to be in equilibrium.
#include "hand/paper/working.hpp"
#include "phrases/working/remarks.hpp"
#include "report/derivation/working_text.hpp"

#include "support/random.hpp"
#include "support/reading/printed_working.hpp"
#include "support/reading/working_reader.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;

namespace {

// D---C      4 m wide and 3 m high, without a diagonal, on a pin at A and a roller at B
// |   |
// A---B
Truss square() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 4, 0);
    joint(truss, "C", 4, 3);
    joint(truss, "D", 0, 3);
    for (const auto& [a, b] : {std::pair{"A", "B"}, {"B", "C"}, {"C", "D"}, {"D", "A"}}) {
        member(truss, a, b);
    }
    pin(truss, "A");
    roller(truss, "B");
    return truss;
}

// A        D     three bars between two pins, like a hanging rope: B and C lie 3 m lower
//  \      /
//   B----C
Truss rope() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 4, -3);
    joint(truss, "C", 8, -3);
    joint(truss, "D", 12, 0);
    for (const auto& [a, b] : {std::pair{"A", "B"}, {"B", "C"}, {"C", "D"}}) {
        member(truss, a, b);
    }
    pin(truss, "A");
    pin(truss, "D");
    return truss;
}

std::string_view endOfCounting(const Working& working) {
    REQUIRE_FALSE(working.steps.empty());
    return working.steps.front().remarks.front().english;
}

double foundForce(const Truss& truss, const Working& working, const char* a, const char* b) {
    const int index = static_cast<int>(memberAt(truss, a, b));
    for (const Found& found : working.steps.back().found) {
        if (found.symbol.kind == SymbolKind::MemberForce && found.symbol.member.index == index) {
            return found.value;
        }
    }
    FAIL("the force is not found");
    return 0;
}

void requireSound(const Truss& truss) {
    CHECK(objectionToWorkingOf(truss) == "");
    const Solution solution = solve(truss);
    const std::string text = workingText({englishPhrases(), truss}, workOut(truss, {}, solution));
    INFO(text);
    CHECK(readPrintedText(text, truss, solution).objection == "");
}

// The loads that balance random member forces and reactions: in the joint equations they are on the
// other side.
void addBalancedLoads(Truss& truss, std::uint64_t seed) {
    Random random(seed);
    truss.loads.clear();
    std::vector<Vec2> sums(truss.joints.size());
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const double force = random.integer(-20, 20);
        const Vec2 vector = memberVector(truss, {static_cast<int>(i)});
        const Vec2 pull = (force / length(vector)) * vector;
        const Member& ends = truss.members[i];
        sums[ends.a.at()] = sums[ends.a.at()] + pull;
        sums[ends.b.at()] = sums[ends.b.at()] - pull;
    }
    for (const Restraint& restraint : structureOf(truss).restraints) {
        Vec2& sum = sums[restraint.joint.at()];
        sum = sum + static_cast<double>(random.integer(-20, 20)) * restraint.along;
    }
    for (std::size_t i = 0; i < sums.size(); ++i) {
        force(truss, truss.joints[i].label, -sums[i].x, -sums[i].y);
    }
}

} // namespace

TEST_CASE("a square without a diagonal, loaded along its posts, has a working that says so") {
    // The posts carry the loads straight down: BC −10, DA −6; AB and CD carry nothing.
    Truss truss = square();
    force(truss, "C", 0, -10);
    force(truss, "D", 0, -6);
    const Working working = workOut(truss, {}, solve(truss));
    CHECK(endOfCounting(working) == phrase::kCountBalanced.english);
    CHECK(working.complete);
    CHECK(foundForce(truss, working, "B", "C") == -10);
    CHECK(foundForce(truss, working, "D", "A") == -6);
    CHECK(foundForce(truss, working, "A", "B") == 0);
    CHECK(foundForce(truss, working, "C", "D") == 0);
    requireSound(truss);
}

TEST_CASE("bars that hang in the rope's shape of their loads have a working that says so") {
    // Half the load, 6 kN, is carried at each end; the bar at A has a slope of 3/4, so that it
    // carries 6·5/3 = 10 kN in tension, and 10·4/5 = 8 kN goes through BC.
    Truss truss = rope();
    force(truss, "B", 0, -6);
    force(truss, "C", 0, -6);
    const Working working = workOut(truss, {}, solve(truss));
    CHECK(endOfCounting(working) == phrase::kCountBalanced.english);
    CHECK(working.complete);
    CHECK_THAT(foundForce(truss, working, "A", "B"), WithinAbs(10, 1e-12));
    CHECK_THAT(foundForce(truss, working, "B", "C"), WithinAbs(8, 1e-12));
    CHECK_THAT(foundForce(truss, working, "C", "D"), WithinAbs(10, 1e-12));
    requireSound(truss);
}

TEST_CASE("loads out of that shape are refused, because the truss moves") {
    Truss truss = rope();
    force(truss, "B", 0, -6);
    force(truss, "C", 0, -5);
    const Working working = workOut(truss, {}, solve(truss));
    CHECK(endOfCounting(working) == phrase::kCountMechanism.english);
    CHECK_FALSE(working.complete);
    CHECK(working.steps.size() == 1);
}

TEST_CASE("balanced loads on a mechanism with more than it needs elsewhere are refused as well") {
    // Between two pins AB can carry any force: equilibrium does not determine it.
    Truss truss = square();
    truss.supports.back().kind = SupportKind::Pin;
    force(truss, "C", 0, -10);
    const Solution solution = solve(truss);
    CHECK(solution.counting.mechanisms == 1);
    CHECK(solution.counting.redundants == 1);
    const Working working = workOut(truss, {}, solution);
    CHECK(endOfCounting(working) == phrase::kCountMechanism.english);
    CHECK(working.steps.size() == 1);
}

TEST_CASE("every mechanism under loads that balance on it has a working, from its print too") {
    for (int seed = 0; seed < 300; ++seed) {
        Truss truss = randomMechanism(static_cast<std::uint64_t>(seed), 1 + seed % 2);
        addBalancedLoads(truss, static_cast<std::uint64_t>(seed));
        INFO("seed " << seed);
        const Solution solution = solve(truss);
        REQUIRE(solution.solved);
        REQUIRE(solution.counting.mechanisms > 0);
        requireSound(truss);
    }
}
