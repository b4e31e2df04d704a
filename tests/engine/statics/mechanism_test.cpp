#include "report/results/solution_text.hpp"
#include "statics/solve/solution.hpp"

#include "support/dense.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;

namespace {

// The largest rate at which the motion would strain a member or violate a support, over all
// columns.
double fastestStrain(const Truss& truss, const Mechanism& mechanism) {
    const DenseMatrix matrix = denseEquilibrium(truss);
    std::vector<double> rates(matrix.front().size());
    for (std::size_t i = 0; i < mechanism.velocities.size(); ++i) {
        for (std::size_t k = 0; k < rates.size(); ++k) {
            rates[k] += matrix[2 * i][k] * mechanism.velocities[i].x +
                        matrix[2 * i + 1][k] * mechanism.velocities[i].y;
        }
    }
    double fastest = 0;
    for (double rate : rates) {
        fastest = std::max(fastest, std::abs(rate));
    }
    return fastest;
}

void apply(Truss& truss, const Cure& cure) {
    if (cure.a.valid()) {
        Member member;
        member.a = cure.a;
        member.b = cure.b;
        truss.members.push_back(member);
        return;
    }
    Support support;
    support.joint = cure.support;
    support.kind = cure.pin ? SupportKind::Pin : SupportKind::Roller;
    support.reaction = cure.reaction;
    if (cure.pin) {
        std::erase_if(truss.supports,
                      [&](const Support& old) { return old.joint == cure.support; });
    }
    truss.supports.push_back(support);
}

// A rectangle of 4 m by 3 m on a pin and a roller, without a diagonal.
//
//     D──C
//     |  |
//     A──B
Truss rectangle() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 4, 0);
    joint(truss, "C", 4, 3);
    joint(truss, "D", 0, 3);
    members(truss, {"AB", "BC", "CD", "DA"});
    pin(truss, "A");
    roller(truss, "B");
    return truss;
}

} // namespace

TEST_CASE("a rectangle without a diagonal sways, and its diagonal would cure it") {
    Truss truss = rectangle();
    force(truss, "D", 5, 0);
    const Solution solution = solve(truss);
    CHECK(solution.status == Status::Mechanism);
    CHECK_FALSE(solution.solved);
    REQUIRE(solution.mechanisms.size() == 1);
    const Mechanism& sway = solution.mechanisms.front();
    // The top moves to the right, as the load pushes it; the bottom does not move.
    CHECK_THAT(sway.velocities[2].x, WithinAbs(1, 1e-12));
    CHECK_THAT(sway.velocities[3].x, WithinAbs(1, 1e-12));
    CHECK(sway.velocities[0] == Vec2{});
    CHECK(sway.velocities[1] == Vec2{});
    CHECK(sway.moving == std::vector<JointId>{JointId{2}, JointId{3}});
    CHECK(mechanismSentence({englishPhrases(), truss}, sway) ==
          "Joints C and D can slide together horizontally; a member between A and C, or a support "
          "at C that holds it horizontally, would stop it.");
}

TEST_CASE("loads that a mechanism happens to balance are solved for") {
    Truss truss = rectangle();
    force(truss, "C", 0, -6);
    const Solution solution = solve(truss);
    CHECK(solution.status == Status::Mechanism);
    REQUIRE(solution.solved);
    // The load is on the post above the roller.
    CHECK_THAT(solution.forces[memberAt(truss, "B", "C")], WithinAbs(-6e3, 1e-9));
    CHECK_THAT(solution.jointReactions[jointAt(truss, "B")].y, WithinAbs(6e3, 1e-9));
}

TEST_CASE("a mechanism without loads is not called balanced") {
    CHECK_FALSE(solve(rectangle()).solved);
}

TEST_CASE("a truss on parallel rollers slides, and a pin would cure it") {
    Truss truss = rectangle();
    member(truss, "A", "C");
    truss.supports.clear();
    roller(truss, "A");
    roller(truss, "B");
    roller(truss, "C");
    const Solution solution = solve(truss);
    REQUIRE(solution.mechanisms.size() == 1);
    CHECK(mechanismSentence({englishPhrases(), truss}, solution.mechanisms.front()) ==
          "The truss as a whole can slide horizontally; a pin "
          "in place of the roller at A would stop it.");
}

TEST_CASE("a truss whose reactions meet in one point turns about it") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 4, 0);
    joint(truss, "C", 2, 3);
    members(truss, {"AB", "BC", "CA"});
    // Vertical at C, and at 45° from A and B: all three lines pass through (2, 2).
    roller(truss, "A", 45);
    roller(truss, "B", 135);
    roller(truss, "C", 90);
    const Solution solution = solve(truss);
    CHECK(solution.counting.mechanisms == 1);
    CHECK(solution.counting.redundants == 1);
    REQUIRE(solution.mechanisms.size() == 1);
    CHECK(mechanismSentence({englishPhrases(), truss}, solution.mechanisms.front())
              .find("about the point where the lines of its reactions meet") != std::string::npos);
}

TEST_CASE("two members in one line hold their joint only along the line") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 3, 0);
    joint(truss, "C", 6, 0);
    member(truss, "A", "B");
    member(truss, "B", "C");
    pin(truss, "A");
    pin(truss, "C");
    const Solution solution = solve(truss);
    // m + r = 2j = 6, and yet one mechanism with one redundant.
    CHECK(solution.counting.mechanisms == 1);
    CHECK(solution.counting.redundants == 1);
    REQUIRE(solution.mechanisms.size() == 1);
    CHECK(mechanismSentence({englishPhrases(), truss}, solution.mechanisms.front()) ==
          "All members at joint B lie in one line, and nothing "
          "holds it across that line; a support at B that "
          "holds it vertically would stop it.");
}

TEST_CASE("a truss without supports moves in three ways, each cured by a support") {
    Truss truss = rectangle();
    member(truss, "A", "C");
    truss.supports.clear();
    const Solution solution = solve(truss);
    REQUIRE(solution.mechanisms.size() == 3);
    for (const Mechanism& mechanism : solution.mechanisms) {
        CHECK(mechanismSentence({englishPhrases(), truss}, mechanism)
                  .find("Nothing supports the truss") == 0);
        CHECK(mechanism.cure.support.valid());
    }
}

TEST_CASE("redundants are told apart: brought in by the supports, or among the members") {
    Truss truss = rectangle();
    member(truss, "A", "C");
    member(truss, "B", "D");
    CHECK(solve(truss).counting.internal == 1);
    CHECK(solve(truss).counting.external == 0);
    truss.supports.back().kind = SupportKind::Pin;
    const Counting counting = solve(truss).counting;
    CHECK(counting.internal == 1);
    CHECK(counting.external == 1);
    CHECK(solve(truss).status == Status::Indeterminate);
}

TEST_CASE("what a truss has lost in members and supports, it has gained in mechanisms") {
    for (std::uint64_t seed = 0; seed < 700; ++seed) {
        const int lost = static_cast<int>(seed % 4) + 1;
        const Truss truss = randomMechanism(seed, lost);
        const Solution solution = solve(truss);
        REQUIRE(solution.status == Status::Mechanism);
        CHECK(solution.counting.redundants == 0);
        REQUIRE(solution.counting.mechanisms == lost);
        REQUIRE(static_cast<int>(solution.mechanisms.size()) == lost);
        for (const Mechanism& mechanism : solution.mechanisms) {
            REQUIRE(fastestStrain(truss, mechanism) < 1e-9);
            double fastest = 0;
            for (Vec2 v : mechanism.velocities) {
                fastest = std::max(fastest, length(v));
            }
            REQUIRE_THAT(fastest, WithinAbs(1, 1e-12));
        }
    }
}

TEST_CASE("all the cures that are named, taken together, make the truss stable") {
    for (std::uint64_t seed = 0; seed < 700; ++seed) {
        Truss truss = randomMechanism(seed, static_cast<int>(seed % 4) + 1);
        const std::vector<Mechanism> mechanisms = solve(truss).mechanisms;
        for (const Mechanism& mechanism : mechanisms) {
            apply(truss, mechanism.cure);
        }
        INFO("seed " << seed << ": " << mechanisms.front().moving.size() << " joints move");
        const Solution cured = solve(truss);
        REQUIRE(cured.errors.empty());
        REQUIRE(cured.counting.mechanisms == 0);
    }
}

TEST_CASE("a joint without a member is told as such") {
    Truss truss = rectangle();
    member(truss, "A", "C");
    joint(truss, "K", 2, 5);
    const Solution solution = solve(truss);
    REQUIRE(solution.mechanisms.size() == 2);
    CHECK(mechanismSentence({englishPhrases(), truss}, solution.mechanisms.front())
              .find("Joint K is joined to no member") == 0);
}
