#include "hand/virtual_work/unit_load.hpp"
#include "report/derivation/unit_load_text.hpp"

#include "support/reading/working_reader.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <string>
#include <utility>
#include <vector>

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
    CHECK(std::abs(table.rows[0].growth - 16.0 * 4 / 60) < 1e-12); // mm
    CHECK(std::abs(table.rows[0].work + 256 * third / 60) < 1e-12);
    CHECK(std::abs(table.rows[1].work + 500 * third / 60) < 1e-12);
    CHECK(std::abs(table.total + 4.2) < 1e-12);
}

TEST_CASE("warming, misfit and settlement stand in columns and rows of their own") {
    Truss truss = slantedBracket();
    truss.members[0].warming = 50; // K: 1.2e-5 · 50 · 4000 mm = 2.4 mm, n = −4/3: −3.2 mm
    truss.members[1].misfit = 3;   // mm, n = 5/3: +5 mm
    truss.supports[1].settle = {0, -2}; // mm; B_y under the unit load is −1: −(−1)(−2) = −2 mm
    const UnitLoadTable table = tableOf(truss, "C", DisplacementAxis::Y);
    REQUIRE(table.complete);
    CHECK(std::abs(table.rows[0].thermal - 2.4) < 1e-12);
    CHECK(table.rows[0].alpha == 1.2e-5);
    CHECK(std::abs(table.rows[1].misfit - 3) < 1e-12);
    CHECK(std::abs(table.members - (-4.2 - 3.2 + 5)) < 1e-12);
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

TEST_CASE("the table says what e is, adds up its last column, and says where the joint goes") {
    const Truss truss = slantedBracket();
    const UnitLoadTable table = tableOf(truss, "C", DisplacementAxis::Y);
    const std::string text = unitLoadText({englishPhrases(), truss}, table);
    CHECK(contains(text, "Put a unit load up at C, and nothing else"));
    CHECK(contains(text, "    e = N\u2009\u00B7\u2009L/EA\n"));
    CHECK(contains(text, "1\u2009\u00B7\u2009\u03B4 = \u03A3\u2009n\u2009\u00B7\u2009e\n"));
    CHECK_FALSE(contains(text, "\u0394"));
    // −256/180 and −500/180: −1.42 − 2.78 is −4.20
    CHECK(contains(text,
                   "\u03B4 = \u03A3\u2009n\u2009\u00B7\u2009e \u2248 \u22121.42 \u2212 2.78 = "
                   "\u22124.20\u2009mm\n"));
    CHECK(contains(text, "    C moves 4.20\u2009mm down.\n"));
    const std::string html = unitLoadHtml({englishPhrases(), truss}, table);
    CHECK(contains(html, "<th scope=\"row\">Total</th>"));
    CHECK(contains(html, "<caption>What each member adds to the displacement</caption>"));
}

TEST_CASE("a class with three significant figures gets three in a displacement") {
    Truss truss = slantedBracket();
    truss.classSettings.form = NumberForm::Significant;
    truss.classSettings.digits = 3;
    truss.loads.clear();
    force(truss, "C", 0, -0.12);
    const UnitLoadTable table = tableOf(truss, "C", DisplacementAxis::Y);
    CHECK(
        contains(unitLoadText({englishPhrases(), truss}, table), "C moves 0.0420\u2009mm down.\n"));
}

TEST_CASE("warming and misfit are written out with their numbers") {
    Truss truss = slantedBracket();
    truss.members[0].warming = 50;
    truss.members[1].misfit = -3;
    truss.supports[1].settle = {0, -2};
    const std::string text =
        unitLoadText({englishPhrases(), truss}, tableOf(truss, "C", DisplacementAxis::Y));
    CHECK(contains(text, "Warmer by 50\u2009K: AC.\n"));
    CHECK(contains(text, "= 0.000012\u2009\u00B7\u200950\u2009\u00B7\u20094000\u2009mm = "
                         "2.4\u2009mm\n"));
    CHECK(contains(text, "Made 3\u2009mm too short: BC.\n"));
    CHECK(contains(text, "\u0394L = \u22123\u2009mm\n"));
    CHECK(contains(text, "its reactions r on the settlements \u0394"));
}

TEST_CASE("columns that are zero for every member are left out") {
    Truss truss = slantedBracket();
    truss.loads.clear();
    truss.members[0].warming = 50;
    const std::string text =
        unitLoadText({englishPhrases(), truss}, tableOf(truss, "C", DisplacementAxis::Y));
    CHECK(contains(text, "No load acts on the truss, so its own forces N are zero."));
    CHECK_FALSE(contains(text, "EA"));
    CHECK_FALSE(contains(text, "N, kN"));
    CHECK(contains(text, "e, mm"));
}

TEST_CASE("the displacement of an indeterminate truss is that of the stiffness solution, whatever "
          "strains it") {
    int compared = 0;
    for (std::uint64_t seed = 0; seed < 1000; ++seed) {
        Truss truss = randomIndeterminateTruss(seed);
        addRandomStrains(truss, seed);
        const Solution solution = solve(truss);
        if (!solution.displaced || solution.counting.redundants > kMostRedundants) {
            continue;
        }
        double largest = 0;
        for (const Vec2 moved : solution.displacements) {
            largest = std::max({largest, std::abs(moved.x), std::abs(moved.y)});
        }
        const JointId joint{static_cast<int>(seed % truss.joints.size())};
        for (const DisplacementAxis axis : {DisplacementAxis::X, DisplacementAxis::Y}) {
            INFO("seed " << seed);
            const UnitLoadTable table = unitLoadTable(truss, {}, solution, joint, axis);
            REQUIRE(table.method.has_value());
            if (table.method->end == ForceMethodEnd::Unstrained) {
                continue; // a support shares its reaction with another
            }
            REQUIRE(table.complete);
            const Vec2 moved = solution.displacements[joint.at()];
            const double wanted = axis == DisplacementAxis::X ? moved.x : moved.y;
            const double total = table.total * toMetre(truss.units.displacement);
            REQUIRE(std::abs(total - wanted) <= 1e-8 * largest);
            REQUIRE(objectionTo(table.unitTruss, table.unitWorking, solve(table.unitTruss)) == "");
            const std::string text = unitLoadText({englishPhrases(), truss}, table);
            REQUIRE(contains(text, "The truss is statically indeterminate"));
            ++compared;
        }
    }
    CHECK(compared > 400);
}

TEST_CASE("a displacement with more redundants than are worked by hand is refused with the reason "
          "of the force method") {
    Truss truss = slantedBracket();
    pin(truss, "C");
    joint(truss, "D", 0, 6);
    pin(truss, "D");
    member(truss, "D", "C");
    truss.members.back().section = "bar";
    REQUIRE(solve(truss).counting.redundants > kMostRedundants);
    CHECK(
        contains(unitLoadText({englishPhrases(), truss}, tableOf(truss, "C", DisplacementAxis::Y)),
                 "The truss has 3 redundants."));
}

namespace {

// The numbers of a printed sum "≈ a + b − c = d" in units of their last decimal.
struct PrintedSumOf {
    long parts = 0;
    long sum = 0;
    int count = 0;
};

// Reads δ = … ≈ −1.422 − 2.778 = −4.200 from a line of text; no parts if it holds no such sum.
PrintedSumOf printedSum(const std::string& line) {
    std::vector<std::string> sides;
    std::string side;
    std::string plain = line;
    const auto replaceAll = [&](const std::string& from, const std::string& to) {
        for (std::size_t at = plain.find(from); at != std::string::npos; at = plain.find(from)) {
            plain.replace(at, from.size(), to);
        }
    };
    replaceAll("\u2212", "-");
    replaceAll("\u2248", "=");
    for (const char c : plain) {
        if (c == '=') {
            sides.push_back(std::exchange(side, {}));
        } else if (c != ' ' && c != '.') {
            side += c;
        }
    }
    sides.push_back(side);
    PrintedSumOf sum;
    for (std::size_t i = 0; i + 1 < sides.size(); ++i) {
        if (sides[i].find_first_of("0123456789") != 0 && sides[i].find('-') != 0) {
            continue;
        }
        for (const char* at = sides[i].c_str(); *at;) {
            char* end = nullptr;
            sum.parts += std::strtol(at, &end, 10);
            ++sum.count;
            at = end == at ? at + 1 : end;
        }
        sum.sum = std::strtol(sides[i + 1].c_str(), nullptr, 10);
        return sum;
    }
    return sum;
}

} // namespace

TEST_CASE("a reader who adds up the printed shares gets the printed displacement") {
    int sums = 0;
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        Truss truss = withSections(randomDeterminateTruss(seed), seed);
        if (seed % 2 == 0) {
            addRandomStrains(truss, seed);
        }
        truss.classSettings.digits = static_cast<int>(seed % 4);
        const JointId joint{static_cast<int>(seed % truss.joints.size())};
        const UnitLoadTable table =
            unitLoadTable(truss, {}, solve(truss), joint, DisplacementAxis::Y);
        const std::string text = unitLoadText({englishPhrases(), truss}, table);
        const std::size_t at = text.rfind("\u03B4 = \u03A3");
        REQUIRE(at != std::string::npos);
        const PrintedSumOf sum = printedSum(text.substr(at, text.find('\n', at) - at));
        INFO("seed " << seed << "\n" << text);
        if (sum.count > 1) {
            REQUIRE(sum.parts == sum.sum);
            ++sums;
        }
    }
    CHECK(sums > 100);
}
