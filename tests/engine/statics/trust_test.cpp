// How far results can be trusted, and that users are always told.

#include "exchange/results/json_results.hpp"
#include "report/results/results_text.hpp"
#include "report/results/trust_text.hpp"
#include "statics/matrix/norm_estimate.hpp"
#include "statics/matrix/wide.hpp"
#include "support/dense.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/extreme_truss.hpp"
#include "support/trusses/hard_truss.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::ContainsSubstring;
using Catch::Matchers::WithinRel;

namespace {

// Panels of 3 m; every third member is `ratio` times as stiff as the others.
Truss thirdsStiff(double ratio) {
    Truss truss = bracedStrip(3, 3);
    force(truss, "T1", 3, -13);
    force(truss, "B2", 0, -3);
    truss.materials.push_back({"steel", 210e3, {}, {}, {}, {}});
    truss.sections.push_back({"bar", "steel", 1000, {}, "", {}, {}});
    truss.sections.push_back({"stiff", "steel", 1000 * ratio, {}, "", {}, {}});
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        truss.members[i].section = i % 3 == 0 ? "stiff" : "bar";
    }
    return truss;
}

Truss loadedArch(double rise) {
    Truss truss = flatArch(rise);
    force(truss, "C", 0, -1); // kN
    return truss;
}

} // namespace

TEST_CASE("members a thousand million times as stiff as others get the forces of fractions") {
    // Where stiff members are effectively rigid, forces no longer depend on how stiff they are.
    const Solution much = solve(thirdsStiff(1e9));
    const Solution more = solve(thirdsStiff(1e12));
    REQUIRE(much.solved);
    REQUIRE(more.solved);
    CHECK(much.largest < 20e3);
    CHECK(much.trust.wide);
    for (std::size_t i = 0; i < much.forces.size(); ++i) {
        CHECK(std::abs(much.forces[i] - more.forces[i]) <= 1e-7 * much.largest);
    }
    CHECK_THAT(resultsTextOf(thirdsStiff(1e9)), ContainsSubstring("right units"));
}

TEST_CASE("members of ordinary stiffnesses are not asked about") {
    const Solution solution = solve(thirdsStiff(20));
    CHECK_FALSE(solution.standsOut);
    CHECK_FALSE(solution.trust.wide);
    CHECK(trustSentences({englishPhrases(), thirdsStiff(20)}, solution).empty());
}

TEST_CASE("stiffnesses that no arithmetic here can carry give no forces, and a member is named") {
    const Truss truss = thirdsStiff(1e27);
    const Solution solution = solve(truss);
    CHECK(solution.status == Status::Indeterminate);
    CHECK_FALSE(solution.solved);
    const std::string words = resultsTextOf(truss);
    CHECK_THAT(words, ContainsSubstring("differ too much"));
    CHECK_THAT(words, ContainsSubstring("B0–B1"));
    // All E and A are given: nothing says that they are missing.
    CHECK_THAT(words, !ContainsSubstring("does not determine the forces"));
}

TEST_CASE("an arch as flat as a line is said to be close to a mechanism, and where") {
    const Truss truss = loadedArch(1e-9);
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    // Joint C: 2·F·sin = 1 kN, sin = 1e-9.
    CHECK_THAT(solution.forces[0], WithinRel(-0.5e3 / 1e-9, 1e-9));
    CHECK(solution.trust.joint == JointId{2});
    CHECK_THAT(solution.trust.amplification, WithinRel(0.5e9, 1e-6));
    CHECK_THAT(resultsTextOf(truss), ContainsSubstring("Close to a mechanism at joint C"));
    // The load is small compared with these forces, and is still carried: 0.5 kN per support.
    CHECK_THAT(resultsTextOf(truss), ContainsSubstring("0.50"));
}

TEST_CASE("an arch with a rise of a tenth is close to nothing") {
    CHECK(trustSentences({englishPhrases(), loadedArch(0.1)}, solve(loadedArch(0.1))).empty());
}

TEST_CASE("a truss that counts as a mechanism, and strictly is none, is said to be so") {
    const Truss truss = loadedArch(1e-11);
    const Solution solution = solve(truss);
    REQUIRE(solution.status == Status::Mechanism);
    REQUIRE(solution.barelyHeld);
    CHECK(solution.barelyHeld->joint == JointId{2});
    CHECK_THAT(resultsTextOf(truss), ContainsSubstring("The coordinates do hold joint C"));
    CHECK_FALSE(solve(loadedArch(0)).barelyHeld);
}

TEST_CASE("the text of results tells the residual and the bound of the error") {
    CHECK_THAT(resultsTextOf(roof()), ContainsSubstring("Equilibrium at every joint is met"));
    CHECK_THAT(resultsTextOf(roof()), ContainsSubstring("rounding puts no force off by more than"));
}

TEST_CASE("figures that rounding may have spoiled are neither printed nor passed over in silence") {
    // A bound of 2e-5 of 16 kN is 0.3 N; the last certain digit is tenths of a newton, the third
    // decimal in kN.
    Truss truss = gable();
    truss.classSettings.digits = 6;
    Solution solution = solve(truss);
    solution.trust.error = 2e-5;
    const std::string text = resultsText({englishPhrases(), truss}, solution);
    CHECK_THAT(text, ContainsSubstring("Rounding leaves 4 figures"));
    CHECK_THAT(text, ContainsSubstring("16.000 "));
    CHECK_THAT(text, !ContainsSubstring("16.0000"));
    CHECK_THAT(resultsCsv(truss, solution), ContainsSubstring("figures,4,"));
    CHECK_THAT(writeResults(englishPhrases(), truss, solution),
               ContainsSubstring("\"figures\": 4"));
    CHECK_THAT(resultsHtml({englishPhrases(), truss}, solution),
               ContainsSubstring("Rounding leaves 4 figures"));
}

TEST_CASE("trusses that are hard on arithmetic get right forces, or words") {
    const ScanCounts counts = scanExtremes(100000, 150); // seeds of its own; the scan takes 0 …
    CHECK(counts.wrong == "");
    CHECK(counts.right > 0);
    CHECK(counts.flagged > 0);
    CHECK(counts.refused > 0);
}

TEST_CASE("the estimate of a norm is at most the norm, and near it") {
    for (std::uint64_t seed = 0; seed < 40; ++seed) {
        const DenseMatrix matrix = denseEquilibrium(randomDeterminateTruss(seed));
        const std::size_t size = matrix.size();
        const auto times = [&](const std::vector<double>& x) {
            std::vector<double> y(size);
            for (std::size_t i = 0; i < size; ++i) {
                for (std::size_t j = 0; j < size; ++j) {
                    y[i] += matrix[i][j] * x[j];
                }
            }
            return y;
        };
        const auto transposed = [&](const std::vector<double>& y) {
            std::vector<double> x(size);
            for (std::size_t i = 0; i < size; ++i) {
                for (std::size_t j = 0; j < size; ++j) {
                    x[j] += matrix[i][j] * y[i];
                }
            }
            return x;
        };
        double norm = 0;
        for (std::size_t j = 0; j < size; ++j) {
            double sum = 0;
            for (std::size_t i = 0; i < size; ++i) {
                sum += std::abs(matrix[i][j]);
            }
            norm = std::max(norm, sum);
        }
        for (const std::size_t start : {kAllColumns, std::size_t{0}, size / 2}) {
            const NormEstimate estimate = estimateNorm(size, times, transposed, start);
            CHECK(estimate.norm <= norm * (1 + 1e-12));
            CHECK(estimate.norm >= norm / 3); // Higham 1988, section 5: in practice a factor of 3
        }
    }
}

TEST_CASE("wide numbers keep twice the figures of a double") {
    // (1 + 2^-70)·(1 − 2^-70) = 1 − 2^-140, which still rounds to 1; 1/3 tripled is 1 to within
    // 2^-104.
    const double tiny = std::ldexp(1.0, -70);
    CHECK(narrow((Wide(1) + tiny) - 1) == tiny);
    CHECK(std::abs(narrow(Wide(1) / 3 * 3 - 1)) <= std::ldexp(1.0, -104));
    const Wide root = rootOf(Wide(2));
    CHECK(std::abs(narrow(root * root - 2)) <= std::ldexp(1.0, -102));
    CHECK(narrow((Wide(1e16) + 1) - 1e16) == 1);
}

TEST_CASE("a settlement that the truss can follow takes no load's forces away, however large") {
    Truss truss = crossedSquare();
    roller(truss, "B");
    force(truss, "C", 0, -1e-6);
    const Solution still = solve(truss);
    truss.supports[1].settleAlong = -4e3; // mm: would cause 1e9 N if the truss could not follow
    const Solution settled = solve(truss);
    REQUIRE(still.solved);
    REQUIRE(settled.solved);
    CHECK(settled.largest > 0);
    for (std::size_t i = 0; i < still.forces.size(); ++i) {
        CHECK(std::abs(still.forces[i] - settled.forces[i]) <=
              (settled.trust.error + 1e-12) * still.largest);
    }
}

TEST_CASE("the misfit of a member as good as rigid presses the others as it should") {
    const auto under = [](double ratio) {
        Truss truss = crossedSquare();
        roller(truss, "B");
        truss.sections.push_back({"stiff", "steel", 1000 * ratio, {}, "", {}, {}});
        truss.members[0].section = "stiff";
        truss.members[0].misfit = 5; // mm
        return solve(truss);
    };
    const Solution much = under(1e6);
    const Solution more = under(1e10);
    REQUIRE(much.solved);
    REQUIRE(more.solved);
    CHECK(more.largest > 10e3);
    for (std::size_t i = 0; i < much.forces.size(); ++i) {
        CHECK(std::abs(much.forces[i] - more.forces[i]) <= 1e-5 * more.largest);
    }
}

TEST_CASE("a load along an inclined roller goes straight into it and moves nothing") {
    Truss truss = crossedSquare();
    roller(truss, "B", 37);
    Load load;
    load.what = AngledForce{jointAt(truss, "B") == 1 ? JointId{1} : JointId{}, 10, 37};
    truss.loads.push_back(load);
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    CHECK_THAT(solution.reactions[2], WithinRel(-10e3, 1e-12));
    for (const double each : solution.forces) {
        CHECK(isZero(solution, each));
    }
    REQUIRE(solution.displaced);
    for (const Vec2 moved : solution.displacements) {
        CHECK(moved == Vec2{});
    }
}

TEST_CASE("two rollers of nearly one direction hold a joint") {
    Truss truss = crossedSquare();
    roller(truss, "B", 90);
    roller(truss, "B", 90.003);
    force(truss, "C", 0, -10);
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    CHECK(solution.residual < 1e-9);
}

TEST_CASE(
    "a settlement at right angles to the only bar leaves it without force, and without a sense") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 3, 4);
    member(truss, "A", "B");
    pin(truss, "A");
    pin(truss, "B");
    truss.supports[1].settle = {4.1, -3.075}; // mm, perpendicular to 3 : 4
    truss.materials.push_back({"steel", 210e3, {}, {}, {}, {}});
    truss.sections.push_back({"bar", "steel", 1000, {}, "", {}, {}});
    truss.members[0].section = "bar";
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    CHECK(senseOf(solution, MemberId{0}) == Sense::Zero);
}
