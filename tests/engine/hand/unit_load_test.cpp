#include "hand/virtual_work/unit_load.hpp"
#include "report/derivation/unit_load_text.hpp"

#include "support/reading/working_reader.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;

namespace {

// A wall bracket of a 3-4-5 triangle: horizontal bar A–C of 4 m, inclined bar B–C of 5 m, 12 kN
// down at C; pins at A and B on the wall; EA = 60 000 kN. N: 16 in A–C (tension), −20 in B–C.
// n, for a unit load up at C: −4/3, 5/3.
// Δ = Σ N·n·L/EA = (−256/3 − 500/3)/60 000 m = −252/60 000 m = −4.2 mm, where
// −256/3 = 16·(−4/3)·4 and −500/3 = (−20)·(5/3)·5.
Truss slantedBracket() {
    Truss truss;
    joint(truss, "A", 0, 3);
    joint(truss, "B", 0, 0);
    joint(truss, "C", 4, 3);
    member(truss, "A", "C");
    member(truss, "B", "C");
    pin(truss, "A");
    pin(truss, "B");
    force(truss, "C", 0, -12);
    Material steel;
    steel.id = "steel";
    steel.E = 200000; // MPa
    steel.alpha = 1.2e-5;
    Section bar;
    bar.id = "bar";
    bar.material = "steel";
    bar.area = 300; // mm²: EA = 60 000 kN
    truss.materials = {steel};
    truss.sections = {bar};
    for (Member& member : truss.members) {
        member.section = "bar";
    }
    return truss;
}

UnitLoadTable tableOf(const Truss& truss, const char* label, DisplacementAxis axis) {
    return unitLoadTable(truss, {}, solve(truss), findJoint(truss, label), axis);
}

} // namespace

TEST_CASE("the unit load table of a bracket has the rows that are written by hand") {
    const UnitLoadTable table = tableOf(slantedBracket(), "C", DisplacementAxis::Y);
    REQUIRE(table.complete);
    REQUIRE(table.rows.size() == 2);
    const double third = 1.0 / 3;
    CHECK(std::abs(table.rows[0].force - 16) < 1e-12);
    CHECK(std::abs(table.rows[0].unit + 4 * third) < 1e-12);
    CHECK(std::abs(table.rows[0].elastic + 256 * third / 60) < 1e-12); // mm
    CHECK(std::abs(table.rows[1].elastic + 500 * third / 60) < 1e-12);
    CHECK(std::abs(table.total + 4.2) < 1e-12);
}

TEST_CASE("warming, misfit and settlement stand in columns and rows of their own") {
    Truss truss = slantedBracket();
    truss.members[0].warming = 50; // K: 1.2e-5 · 50 · 4000 mm = 2.4 mm, n = −4/3: −3.2 mm
    truss.members[1].misfit = 3;   // mm, n = 5/3: +5 mm
    truss.supports[1].settle = {0, -2}; // mm; B_y under the unit load is −1: −(−1)(−2) = −2 mm
    const UnitLoadTable table = tableOf(truss, "C", DisplacementAxis::Y);
    REQUIRE(table.complete);
    CHECK(std::abs(table.thermal + 3.2) < 1e-12);
    CHECK(std::abs(table.misfit - 5) < 1e-12);
    CHECK(std::abs(table.settlement + 2) < 1e-12);
    CHECK(std::abs(table.total - (-4.2 - 3.2 + 5 - 2)) < 1e-12);
}

TEST_CASE("a unit load gives the displacement that the members' growth asks for, of any truss") {
    int compared = 0;
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        Truss truss = withSections(randomDeterminateTruss(seed), seed);
        addRandomStrains(truss, seed);
        const Solution solution = solve(truss);
        REQUIRE(solution.displaced);
        double largest = 0;
        for (const Vec2 moved : solution.displacements) {
            largest = std::max({largest, std::abs(moved.x), std::abs(moved.y)});
        }
        const JointId joint{static_cast<int>(seed % truss.joints.size())};
        for (const DisplacementAxis axis : {DisplacementAxis::X, DisplacementAxis::Y}) {
            INFO("seed " << seed);
            const UnitLoadTable table = unitLoadTable(truss, {}, solution, joint, axis);
            REQUIRE(table.complete);
            const Vec2 moved = solution.displacements[joint.at()];
            const double wanted = axis == DisplacementAxis::X ? moved.x : moved.y;
            const double total = table.total * toMetre(truss.units.displacement);
            REQUIRE(std::abs(total - wanted) <= 1e-9 * largest);
            REQUIRE(objectionTo(table.unitTruss, table.unitWorking, solve(table.unitTruss)) == "");
            ++compared;
        }
    }
    CHECK(compared == 400);
}

TEST_CASE("a table without E and A names the members that need them") {
    Truss truss = slantedBracket();
    truss.members[1].section.clear();
    const UnitLoadTable table = tableOf(truss, "C", DisplacementAxis::Y);
    CHECK_FALSE(table.complete);
    CHECK(table.missing == std::vector<MemberId>{MemberId{1}});
    CHECK(contains(unitLoadText({englishPhrases(), truss}, table),
                   "E and A are needed of BC: give each a section with an area "
                   "and a material with E.\n"));
}

TEST_CASE("the table is written with its totals and what it comes to") {
    const Truss truss = slantedBracket();
    const UnitLoadTable table = tableOf(truss, "C", DisplacementAxis::Y);
    const std::string text = unitLoadText({englishPhrases(), truss}, table);
    CHECK(contains(text, "Put a unit load up at C, and nothing else"));
    CHECK(
        contains(text, "    Total                                                 \u22124.200\n"));
    CHECK(contains(text, "    C moves 4.200\u2009mm down.\n"));
    const std::string html = unitLoadHtml({englishPhrases(), truss}, table);
    CHECK(contains(html, "<th scope=\"row\">Total</th>"));
    CHECK(contains(html, "<caption>What each member adds to the displacement</caption>"));
}
