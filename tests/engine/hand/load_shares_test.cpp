// How loads between joints and self-weight come to the joints, and the tables that say so.
#include "hand/paper/load_shares.hpp"
#include "hand/paper/working.hpp"
#include "report/derivation/working_text.hpp"

#include "support/english.hpp"
#include "support/random.hpp"
#include "support/reading/calculator.hpp"
#include "support/trusses/checked_truss.hpp"
#include "support/trusses/loaded_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_approx.hpp>
#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using namespace gusset::support;

namespace {

// The truss of the seed with a section for every member, under its own weight as well.
Truss heavyTruss(std::uint64_t seed) {
    Truss truss = usualForm(seed);
    truss.materials.push_back({"steel", 210e3, 235, 7850, 1.2e-5, {}});
    truss.sections.push_back({"bar", "steel", 1000, 25, "", {}, {}});
    for (Member& member : truss.members) {
        member.section = "bar";
    }
    truss.loads.push_back({SelfWeight{}, "dead", {}});
    return truss;
}

Combination factored() {
    Combination combination;
    combination.id = "all";
    combination.factors = {{"dead", 1.35}, {"loads", 1.5}};
    return combination;
}

std::vector<TextTable> tablesOf(const Truss& truss, const LoadChoice& choice) {
    const Working working = workOut(truss, choice, solve(truss, choice));
    std::vector<TextTable> tables;
    for (const Passage& passage : workingPassages({englishPhrases(), truss}, working)) {
        for (const auto& part : passage.parts) {
            if (const auto* table = std::get_if<TextTable>(&part)) {
                tables.push_back(*table);
            }
        }
    }
    return tables;
}

// "4 · 2/6 ≈ 1.333": to half a unit of four figures, or exactly.
void checkProduct(const std::string& cell) {
    for (const std::string& relation : {std::string(" = "), std::string(" \u2248 ")}) {
        const std::size_t at = cell.find(relation);
        if (at == std::string::npos) {
            continue;
        }
        const auto left = calculated(cell.substr(0, at));
        const auto right = calculated(cell.substr(at + relation.size()));
        CAPTURE(cell);
        REQUIRE(left);
        REQUIRE(right);
        // Behind "≈" up to four terms, each written to four figures.
        const double slack = relation == " = " ? 1e-9 : 4 * 5e-4;
        CHECK(std::fabs(*left - *right) <= slack * std::fabs(*right) + slack);
    }
}

} // namespace

TEST_CASE("the shares of all loads, with those on joints, are the loads of the joints") {
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        CAPTURE(seed);
        Truss truss = heavyTruss(seed);
        truss.combinations.push_back(factored());
        const LoadChoice choice = seed % 2 == 0 ? LoadChoice{} : LoadChoice{OneCombination{"all"}};
        const double newton = toNewton(truss.units.force);
        std::vector<Vec2> sums(truss.joints.size());
        for (const LoadShares& shares : loadShares(truss, structureOf(truss), choice)) {
            for (const JointShare& share : shares.joints) {
                sums[share.joint.at()] = sums[share.joint.at()] + share.force;
            }
        }
        for (const Load& load : truss.loads) {
            if (const auto force = forceOf(load)) {
                const std::size_t joint = jointOf(load).at();
                sums[joint] = sums[joint] + caseFactor(truss, choice, load) * *force;
            }
        }
        const std::vector<Vec2> loads = jointLoads(truss, choice);
        for (std::size_t i = 0; i < loads.size(); ++i) {
            CHECK(sums[i].x == Catch::Approx(loads[i].x / newton).margin(1e-9));
            CHECK(sums[i].y == Catch::Approx(loads[i].y / newton).margin(1e-9));
        }
    }
}

TEST_CASE("every product and sum in the tables of shares is right in its own digits") {
    int tables = 0;
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        CAPTURE(seed);
        Truss truss = heavyTruss(seed);
        truss.combinations.push_back(factored());
        for (const TextTable& table : tablesOf(truss, OneCombination{"all"})) {
            ++tables;
            for (const auto& row : table.rows) {
                REQUIRE(row.size() == table.head.size());
                for (const Words& cell : row) {
                    checkProduct(plainText(cell.line));
                }
            }
        }
    }
    CHECK(tables > 300);
}

TEST_CASE("a load on a member is shared out by the law of the lever before the reader's eyes") {
    Truss truss = gable(); // AB is the tie, 8 m
    truss.loads.push_back({MemberForce{JointId{0}, JointId{1}, 2, 0, -12}, {}, {}});
    const auto tables = tablesOf(truss, {});
    REQUIRE(tables.size() == 1);
    const std::string text = tableText(tables.front());
    CAPTURE(text);
    // Moments about B: the joint 2 m away takes 6/8, about A: the other takes 2/8.
    CHECK(text.find("12\u2009kN down on AB, 2\u2009m from A on its length of 8\u2009m") !=
          std::string::npos);
    CHECK(text.find("12\u2009\u00B7\u20096/8 = 9") != std::string::npos);
    CHECK(text.find("12\u2009\u00B7\u20092/8 = 3") != std::string::npos);
}
