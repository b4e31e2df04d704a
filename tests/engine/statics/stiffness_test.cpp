#include "statics/equilibrium/stiffness.hpp"
#include "statics/solve/solution.hpp"

#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

// Two bars of 5 m from a wall meet at C; EA = 30,000 kN each.
//
//     A      A and B stand 6 m apart, C 4 m in front of the wall, halfway up
//      \.
//        C
//      /'
//     B
Truss wallBracket() {
    Truss truss;
    joint(truss, "A", 0, 6);
    joint(truss, "B", 0, 0);
    joint(truss, "C", 4, 3);
    member(truss, "A", "C");
    member(truss, "B", "C");
    pin(truss, "A");
    pin(truss, "B");
    truss.materials.push_back({"steel", 200e3, {}, {}, 1.2e-5, {}}); // MPa
    truss.sections.push_back({"bar", "steel", 150, {}, "", {}, {}}); // mm²
    for (Member& bar : truss.members) {
        bar.section = "bar";
    }
    return truss;
}

Response byStiffness(const Truss& truss, const std::vector<Vec2>& loads) {
    const Structure structure = structureOf(truss);
    const JointPattern pattern = analysePattern(structure.joints.size(), structure.bars);
    const Stiffness stiffness =
        factorStiffness(structure, pattern, heldJointsOf(truss, structure).value());
    return respond(structure, pattern, stiffness, loads);
}

std::size_t C(const Truss& truss) { return jointAt(truss, "C"); }

} // namespace

TEST_CASE("a bracket of two bars sags by what virtual work gives") {
    Truss truss = wallBracket();
    force(truss, "C", 0, -12);
    const Solution solution = solve(truss);
    // F_AC = 12/2/(3/5) = 10 kN, F_BC = −10 kN; unit load: n = ±(1/2)/(3/5) = ±5/6;
    // δ = Σ N·n·L/EA = 2·10·(5/6)·5/30000 m = 2.7777… mm down.
    REQUIRE(solution.displaced);
    CHECK_THAT(solution.displacements[C(truss)].y,
               WithinRel(-2.0 * 10 * 5 / 6 * 5 / 30000 * 1, 1e-13));
    CHECK_THAT(solution.displacements[C(truss)].x, WithinAbs(0, 1e-18));
    CHECK_THAT(solution.stresses[0], WithinRel(10e3 / 150e-6, 1e-14));
    CHECK_THAT(solution.elongations[0], WithinRel(10.0 * 5 / 30000, 1e-14));
    // The work of the load is half of 12 kN times its displacement.
    CHECK_THAT(solution.strainEnergy,
               WithinRel(0.5 * 12e3 * -solution.displacements[C(truss)].y, 1e-13));
}

TEST_CASE("settlement, temperature and misfit move a determinate truss without force") {
    Truss truss = wallBracket();
    for (Support& support : truss.supports) {
        support.settle = {2, -5}; // mm, the wall as a whole
    }
    truss.members[0].warming = 40;
    truss.members[1].warming = 40;
    const Solution solution = solve(truss);
    REQUIRE(solution.displaced);
    for (double force : solution.forces) {
        CHECK(force == 0);
    }
    // Both bars elongate by αΔT·5 m = 2.4 mm; C moves out by 2.4/(4/5) = 3 mm, plus the movement of
    // the wall.
    CHECK_THAT(solution.displacements[C(truss)].x, WithinRel(3e-3 + 2e-3, 1e-12));
    CHECK_THAT(solution.displacements[C(truss)].y, WithinRel(-5e-3, 1e-12));
}

TEST_CASE("a bar between two pins that is warmed is pressed by EA·α·ΔT") {
    Truss truss = wallBracket();
    truss.members.pop_back();
    truss.joints[2].at = {5, 6};
    pin(truss, "C");
    truss.members[0].warming = 50;
    truss.supports.erase(truss.supports.begin() + 1); // B is removed from the truss
    truss.joints.erase(truss.joints.begin() + 1);
    truss.members[0].b = JointId{1};
    truss.supports[1].joint = JointId{1};
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    CHECK_THAT(solution.forces[0], WithinRel(-30e6 * 1.2e-5 * 50, 1e-13));
}

TEST_CASE("settlements of one joint that contradict each other are an error with its place") {
    Truss truss = wallBracket();
    roller(truss, "A", 0);
    truss.supports[0].settle = {1, 0};
    const Solution solution = solve(truss);
    CHECK_FALSE(solution.solved);
    REQUIRE_FALSE(solution.errors.empty());
    CHECK(solution.errors.front().at == "supports[2].settle");
}

TEST_CASE("a temperature change without alpha is an error that names the member") {
    Truss truss = wallBracket();
    truss.materials[0].alpha.reset();
    truss.members[1].warming = 10;
    const Solution solution = solve(truss);
    CHECK(solution.status == Status::Determinate);
    CHECK_FALSE(solution.solved);
    REQUIRE_FALSE(solution.errors.empty());
    CHECK(solution.errors.front().at == "members[1].dT");
}

TEST_CASE("self-weight goes half to each end, and bends what is not upright") {
    Truss truss = wallBracket();
    truss.materials[0].density = 8000;
    Load weight;
    weight.what = SelfWeight{};
    truss.loads.push_back(weight);
    const Solution solution = solve(truss);
    // 8000 kg/m³ · 150e-6 m² · 5 m · 9.80665 m/s² = 58.84 N per bar.
    const double bar = 8000 * 150e-6 * 5 * 9.80665;
    CHECK_THAT(solution.loads[C(truss)].y, WithinRel(-bar, 1e-14));
    REQUIRE(solution.moments.size() == 2);
    CHECK_THAT(solution.moments[0], WithinRel(bar * 4 / 8, 1e-14));
}

TEST_CASE("stiffness and equilibrium agree on random determinate trusses") {
    for (std::uint64_t seed = 0; seed < 700; ++seed) {
        const Truss truss = withSections(randomDeterminateTruss(seed), seed);
        const Solution solution = solve(truss);
        REQUIRE(solution.displaced);
        const Response response = byStiffness(truss, solution.loads);
        double farthest = 0;
        for (Vec2 moved : solution.displacements) {
            farthest = std::max(farthest, length(moved));
        }
        for (std::size_t i = 0; i < solution.forces.size(); ++i) {
            REQUIRE_THAT(response.found.forces[i],
                         WithinAbs(solution.forces[i], 1e-9 * solution.largest));
        }
        for (std::size_t i = 0; i < solution.reactions.size(); ++i) {
            REQUIRE_THAT(response.found.reactions[i],
                         WithinAbs(solution.reactions[i], 1e-9 * solution.largest));
        }
        for (std::size_t i = 0; i < solution.displacements.size(); ++i) {
            REQUIRE(length(response.displacements[i] - solution.displacements[i]) <=
                    1e-9 * farthest);
        }
    }
}
