#include "report/results/solution_text.hpp"
#include "statics/solve/exact.hpp"

#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

// A crane of two bars on a wall: C is 2 m out from A, 2 m above B.
//
//     A──C ↓ 35 kN
//       /
//     B'
Truss crane() {
    Truss truss;
    joint(truss, "A", 0, 2);
    joint(truss, "B", 0, 0);
    joint(truss, "C", 2, 2);
    member(truss, "A", "C");
    member(truss, "B", "C");
    pin(truss, "A");
    pin(truss, "B");
    force(truss, "C", 0, -35);
    return truss;
}

Surd surd(const char* numerator, const char* radicand, const char* denominator) {
    return {numerator, radicand, denominator, 0};
}

} // namespace

TEST_CASE("exact forces are written as a root over a whole number") {
    const ExactSolution exact = solveExactly(crane());
    REQUIRE(exact.solved);
    // ΣF_y at C: F_BC = −35·√2 kN; ΣF_x: F_AC = 35 kN.
    CHECK(textOf(exact.forces[0]) == "35");
    CHECK(textOf(exact.forces[1]) == "-35√2");
    CHECK(textOf(exact.jointReactions[0].x) == "-35");
    CHECK(textOf(exact.jointReactions[1].y) == "35");
    CHECK_THAT(exact.forces[1].value, WithinRel(-49.497474683058327, 1e-15)); // 35·1.41421356…
}

TEST_CASE("roots are written in lowest terms") {
    CHECK(textOf(surd("-35", "2", "2")) == "-35√2/2");
    CHECK(textOf(surd("1", "3", "1")) == "√3");
    CHECK(textOf(surd("-1", "5", "4")) == "-√5/4");
    CHECK(textOf(surd("1", "1", "3")) == "1/3");
    CHECK(textOf(surd("0", "1", "1")) == "0");
}

TEST_CASE("decimal coordinates give no binary noise") {
    Truss truss = crane();
    for (Joint& joint : truss.joints) {
        joint.at = {joint.at.x * 0.1, joint.at.y * 0.1};
    }
    truss.joints[2].at = {0.3, 0.2};
    // Rise 0.2, run 0.3: length √13/10; F_BC = −35·√13/2, F_AC = 35·3/2.
    const ExactSolution exact = solveExactly(truss);
    CHECK(textOf(exact.forces[0]) == "105/2");
    CHECK(textOf(exact.forces[1]) == "-35√13/2");
}

TEST_CASE(
    "a roller on a 3 : 4 slope, and one at 45°, have exact answers; one at 37° says why not") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 4, 0);
    joint(truss, "C", 2, 2);
    members(truss, {"AB", "BC", "CA"});
    pin(truss, "A");
    roller(truss, "B", 126.86989764584402); // 4 up, 3 back
    force(truss, "C", 0, -8);
    const ExactSolution exact = solveExactly(truss);
    REQUIRE(exact.solved);
    CHECK(textOf(exact.jointReactions[1].y) == "4"); // half the load
    CHECK(textOf(exact.jointReactions[1].x) == "-3");
    truss.supports[1].reaction = 135;
    CHECK(textOf(solveExactly(truss).jointReactions[1].x) == "-4");
    truss.supports[1].reaction = 127;
    CHECK_FALSE(solveExactly(truss).read);
    CHECK(inexactSentence({englishPhrases(), truss}, solveExactly(truss).whyNot)
              .find("The roller at B has no slope of whole numbers") == 0);
}

TEST_CASE("exact and floating point agree on random trusses, and zero is zero") {
    int solved = 0;
    for (std::uint64_t seed = 0; seed < 700; ++seed) {
        const Truss truss = randomDeterminateTruss(seed);
        const ExactSolution exact = solveExactly(truss);
        if (!exact.solved) {
            continue;
        }
        ++solved;
        const Solution solution = solve(truss);
        for (std::size_t i = 0; i < exact.forces.size(); ++i) {
            REQUIRE_THAT(exact.forces[i].value * 1e3,
                         WithinAbs(solution.forces[i], 1e-9 * solution.largest));
            const bool zero = senseOf(solution, MemberId{static_cast<int>(i)}) == Sense::Zero;
            REQUIRE(zero == (exact.forces[i].numerator == "0"));
        }
        for (std::size_t i = 0; i < truss.joints.size(); ++i) {
            REQUIRE_THAT(exact.jointReactions[i].y.value * 1e3,
                         WithinAbs(solution.jointReactions[i].y, 1e-9 * solution.largest));
        }
    }
    CHECK(solved > 200);
}

TEST_CASE(
    "exact rank and floating-point rank agree on random mechanisms and indeterminate trusses") {
    int read = 0;
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        const Truss truss = seed % 2 ? randomMechanism(seed, 2) : randomIndeterminateTruss(seed);
        const ExactSolution exact = solveExactly(truss);
        if (!exact.read) {
            continue;
        }
        ++read;
        CHECK(exact.counting.rank == solve(truss).counting.rank);
    }
    CHECK(read > 100);
}

TEST_CASE("a critical form is told exactly: enough members, and yet a mechanism") {
    Truss truss = crane();
    truss.joints[2].at = {0, 1}; // on the line between the pins
    const ExactSolution exact = solveExactly(truss);
    CHECK(exact.read);
    CHECK(exact.critical);
    CHECK(exact.counting.mechanisms == 1);
    CHECK_FALSE(exact.solved);
    truss.joints[2].at = {0.001, 1}; // slightly off that line there is an answer
    CHECK(solveExactly(truss).solved);
}

TEST_CASE("above a stated size the answer says that it is in floating point") {
    const Truss truss = stripTruss(Web::Pratt, 200);
    const ExactSolution exact = solveExactly(truss);
    CHECK_FALSE(exact.read);
    CHECK(inexactSentence({englishPhrases(), truss}, exact.whyNot) ==
          "Exact answers are given up to 400 members: above, the answer is in floating point.");
}

TEST_CASE("an exact task in slices gives what it gives in one go, and can be dropped") {
    const Truss truss = stripTruss(Web::Warren, 10);
    ExactTask task(truss, {});
    int slices = 1;
    while (!task.advance(3)) {
        ++slices;
    }
    CHECK(slices > 5);
    CHECK(textOf(task.result().forces.front()) == textOf(solveExactly(truss).forces.front()));
    ExactTask dropped(truss, {});
    CHECK_FALSE(dropped.advance(3));
}

TEST_CASE("loads at an angle are exact on a 3 : 4 slope only") {
    Truss truss = crane();
    truss.loads.clear();
    Load load;
    load.what = AngledForce{JointId{2}, 10, -53.13010235415598}; // 3 across, 4 down
    truss.loads.push_back(load);
    CHECK(textOf(solveExactly(truss).forces[1]) == "-8√2");
    std::get<AngledForce>(truss.loads[0].what).angle = -50;
    CHECK(inexactSentence({englishPhrases(), truss}, solveExactly(truss).whyNot)
              .find("Load 1 has components that are not decimals") == 0);
}
