#include "statics/solve/solution.hpp"

#include "support/dense.hpp"
#include "support/english.hpp"
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

// Forces and reactions by the independent dense elimination, in N.
std::vector<double> denseAnswer(const Truss& truss, const std::vector<Vec2>& loads) {
    const std::optional<DenseMatrix> inverse = denseInverse(denseEquilibrium(truss));
    std::vector<double> answer;
    for (const std::vector<double>& row : inverse.value()) {
        double sum = 0;
        for (std::size_t i = 0; i < loads.size(); ++i) {
            sum -= row[2 * i] * loads[i].x + row[2 * i + 1] * loads[i].y;
        }
        answer.push_back(sum);
    }
    return answer;
}

// A 3-4-5 triangle on a pin and a roller, pushed sideways at the top.
//
//        C → 8 kN        C stands 3 m above A
//       /|
//      / |
//     B──A               B is 4 m left of A
Truss bracket() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", -4, 0);
    joint(truss, "C", 0, 3);
    member(truss, "A", "B");
    member(truss, "B", "C");
    member(truss, "C", "A");
    pin(truss, "B");
    roller(truss, "A");
    force(truss, "C", 8, 0);
    return truss;
}

} // namespace

TEST_CASE("a bracket of three members has the forces that its triangle gives") {
    const Truss truss = bracket();
    const Solution solution = solve(truss);
    REQUIRE(solution.status == Status::Determinate);
    REQUIRE(solution.solved);
    // ΣF_x at C: F_BC·4/5 = 8, so F_BC = 10 kN; ΣF_y at C: F_CA = −10·3/5 = −6 kN. Moments about B:
    // A_y = 8·3/4 = 6 kN; A has no other horizontal force than F_AB, which is 0.
    CHECK_THAT(solution.forces[memberAt(truss, "B", "C")], WithinRel(10e3, 1e-14));
    CHECK_THAT(solution.forces[memberAt(truss, "C", "A")], WithinRel(-6e3, 1e-14));
    CHECK(senseOf(solution, MemberId{static_cast<int>(memberAt(truss, "A", "B"))}) == Sense::Zero);
    CHECK_THAT(solution.jointReactions[jointAt(truss, "A")].y, WithinRel(6e3, 1e-14));
    CHECK_THAT(solution.jointReactions[jointAt(truss, "B")].x, WithinRel(-8e3, 1e-14));
    CHECK_THAT(solution.jointReactions[jointAt(truss, "B")].y, WithinRel(-6e3, 1e-14));
    CHECK(solution.residual < 1e-15);
}

TEST_CASE("the counting of a determinate truss comes out even") {
    const Counting counting = solve(bracket()).counting;
    CHECK(counting.members == 3);
    CHECK(counting.reactions == 3);
    CHECK(counting.rank == 6);
    CHECK(counting.mechanisms == 0);
    CHECK(counting.redundants == 0);
}

TEST_CASE("random determinate trusses of every form agree with a dense elimination") {
    for (std::uint64_t seed = 0; seed < 700; ++seed) {
        const Truss truss = randomDeterminateTruss(seed);
        const Solution solution = solve(truss);
        REQUIRE(solution.solved);
        REQUIRE(solution.status == Status::Determinate);
        CHECK(solution.residual < 1e-14);
        std::vector<double> found = solution.forces;
        found.insert(found.end(), solution.reactions.begin(), solution.reactions.end());
        const std::vector<double> expected = denseAnswer(truss, solution.loads);
        for (std::size_t i = 0; i < found.size(); ++i) {
            REQUIRE_THAT(found[i], WithinAbs(expected[i], 1e-10 * solution.largest));
        }
    }
}

TEST_CASE("a strip of 20,000 members is solved, with the chord force that its moment gives") {
    const int panels = panelsFor(Web::Pratt, 20000);
    const Truss truss = stripTruss(Web::Pratt, panels);
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    // Bottom chord of the first panel: only the diagonal's horizontal part; of the second: the
    // moment about T1 over the depth, A_y·3 m / 3 m = A_y, with A_y = 10 kN·(panels − 1)/2.
    const double support = 10e3 * (panels - 1) / 2;
    CHECK_THAT(solution.forces[1], WithinRel(support, 1e-9));
    CHECK(solution.residual < 1e-12);
}

TEST_CASE("a load along a chord goes to its joints as from simple beams between them") {
    Truss truss = bracket();
    truss.loads.clear();
    Load load;
    // 2 kN/m down over the 4 m between B and A, and over the slope from B to C (4 m in plan): 8 kN
    // each.
    load.what =
        ChordLoad{{findJoint(truss, "A"), findJoint(truss, "B"), findJoint(truss, "C")}, -2};
    truss.loads.push_back(load);
    const std::vector<Vec2> loads = jointLoads(truss, {});
    CHECK(loads[jointAt(truss, "A")] == Vec2{0, -4e3});
    CHECK(loads[jointAt(truss, "B")] == Vec2{0, -8e3});
    CHECK(loads[jointAt(truss, "C")] == Vec2{0, -4e3});
}

TEST_CASE("cases act alone or all together, and combinations weigh them") {
    Truss truss = bracket();
    force(truss, "C", 0, -10, "snow");
    truss.combinations.push_back({"both", {{"loads", 2}, {"snow", 1.5}}, {}});
    CHECK(caseNames(truss) == std::vector<std::string>{"loads", "snow"});
    const std::size_t top = jointAt(truss, "C");
    CHECK(jointLoads(truss, {})[top] == Vec2{8e3, -10e3});
    CHECK(jointLoads(truss, OneCase{"snow"})[top] == Vec2{0, -10e3});
    CHECK(jointLoads(truss, OneCombination{"both"})[top] == Vec2{16e3, -15e3});
}

TEST_CASE("a case or a combination that is not there is an error that names it") {
    const Solution noCase = solve(bracket(), OneCase{"wind"});
    REQUIRE(noCase.status == Status::Invalid);
    CHECK(english(noCase.errors.front().says).find("\"wind\"") != std::string::npos);
    const Solution noCombination = solve(bracket(), OneCombination{"frost"});
    REQUIRE(noCombination.status == Status::Invalid);
    CHECK(english(noCombination.errors.front().says).find("\"frost\"") != std::string::npos);
}

TEST_CASE("a model with errors is not solved") {
    Truss truss = bracket();
    truss.joints[1].label = "A";
    const Solution solution = solve(truss);
    CHECK(solution.status == Status::Invalid);
    CHECK_FALSE(solution.solved);
    CHECK_FALSE(solution.errors.empty());
}
