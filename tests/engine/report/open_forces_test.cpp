// What is said of forces lost in rounding error or negligible beside another, and of a truss that
// has none: it is said everywhere, and never that there is no force.
#include "design/member_checks.hpp"
#include "report/derivation/check_working.hpp"
#include "report/results/check_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"
#include "statics/solve/solution.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/hard_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;

namespace {

bool says(const std::vector<std::string>& sentences, const std::string& part) {
    return std::any_of(sentences.begin(), sentences.end(),
                       [&](const std::string& sentence) { return contains(sentence, part); });
}

// A flat arch A, B, C far above the origin, whose coordinates leave its rise only a few significant
// digits, and beside it, on C and D, a triangle with ordinary forces. Moments about C of 6 to the
// right and 20 down at E, 1 to the right and 2 above: D_y = (20·1 + 6·2)/2 = 16, hence D–E =
// −16·√5/2 = −17.9. The arch carries 10/(2·10⁻⁷) = 5·10⁷.
Truss archBesideTriangle() {
    Truss truss;
    joint(truss, "A", 0, 1000);
    joint(truss, "B", 1, 1000.0000001);
    joint(truss, "C", 2, 1000);
    joint(truss, "D", 4, 1000);
    joint(truss, "E", 3, 1002);
    members(truss, {"AB", "BC", "CE", "DE", "CD"});
    pin(truss, "A");
    pin(truss, "C");
    roller(truss, "D");
    force(truss, "B", 0, -10);
    force(truss, "E", 6, -20);
    truss.materials = {{"steel", 210000, 235, {}, {}, {}}};
    truss.sections = {{"bar", "steel", 100, 5, {}, {}, {}}};
    for (Member& each : truss.members) {
        each.section = "bar";
    }
    return truss;
}

// The pin at A takes all of the 10¹⁰ there; the 5 down at B is negligible beside it.
Truss loadOnSupport() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 1, 0.5);
    joint(truss, "C", 2, 0);
    member(truss, "A", "B");
    member(truss, "B", "C");
    pin(truss, "A");
    pin(truss, "C");
    force(truss, "A", 0, -1e10);
    force(truss, "B", 0, -5);
    return truss;
}

} // namespace

TEST_CASE("a member whose force rounding swallows is not checked, rather than called unloaded") {
    const Truss truss = archBesideTriangle();
    const Solution solution = solve(truss);
    REQUIRE(solution.solved);
    const MemberId open = memberNamed(truss, "D-E");
    REQUIRE(isBelowBound(relianceOf(solution), solution.forces[open.at()]));
    const MemberChecks checks = checkMembers(truss, solution, {});
    const MemberCheck& check = checks.members[open.at()];
    CHECK(check.lacks == std::vector{Lack::Force});
    CHECK(checks.unchecked >= 1);
    CHECK(says(checkLines({englishPhrases(), truss}, checks, {}),
               "force that rounding leaves known"));
    const std::string working = passagesText(checkPassages({englishPhrases(), truss}, check));
    CHECK_FALSE(contains(working, "carries no force"));
}

TEST_CASE("reactions that rounding swallows are named beside the members") {
    const Truss truss = archBesideTriangle();
    CHECK(says(trustSentences({englishPhrases(), truss}, solve(truss)), "Parts of 3 reactions"));
}

TEST_CASE("a working says how far its figures go, and not that any are kept back") {
    const Truss truss = archBesideTriangle();
    const auto sentences = workingSentences({englishPhrases(), truss}, solve(truss));
    CHECK(says(sentences, "figures of this working that are smaller"));
    CHECK_FALSE(says(sentences, "not shown"));
    CHECK_FALSE(says(sentences, "written 0"));
}

TEST_CASE("forces that are nothing beside a load on a support are told of, and are not none") {
    const Truss truss = loadOnSupport();
    const Solution solution = solve(truss);
    REQUIRE(senseOf(solution, MemberId{0}) == Sense::Zero);
    const auto sentences = verdict({englishPhrases(), truss}, solution);
    CHECK(says(sentences, "smaller than a billionth of the largest"));
    CHECK_FALSE(says(sentences, "No member carries any force"));
}

// AB and BC carry 5/2·√1.25/0.5 = 5.59 each, by joint B. Euler: π²·210,000·0.25²/1118² N = 0.1 N.
TEST_CASE("a force that is nothing beside a load on a support is checked all the same") {
    Truss truss = loadOnSupport();
    truss.materials = {{"steel", 210000, 235, {}, {}, {}}};
    truss.sections = {{"wire", "steel", 1, 0.25, {}, {}, {}}};
    for (Member& each : truss.members) {
        each.section = "wire";
    }
    const MemberChecks checks = checkMembers(truss, solve(truss), {});
    CHECK(checks.over == 2);
}

TEST_CASE("a truss whose forces are refused says so wherever its warnings are shown") {
    const Truss truss = refusedStrip();
    const Solution solution = solve(truss);
    REQUIRE(isRefused(solution));
    const auto sentences = trustSentences({englishPhrases(), truss}, solution);
    REQUIRE(sentences.size() == 1);
    CHECK(sentences == std::vector{unsolvedSentence({englishPhrases(), truss}, solution)});
}

TEST_CASE("where nothing acts nothing is balanced, rather than met to 0 of nothing") {
    Truss truss = gable();
    truss.loads.clear();
    const Solution solution = solve(truss);
    CHECK(residualSentence({englishPhrases(), truss}, solution) ==
          "No force acts at any joint: there is nothing to balance.");
}

TEST_CASE("a question stays a question when it becomes a sentence") {
    CHECK(faultSentence(englishPhrases(), {IssueCode::Unstable, "", "are the units right?"}) ==
          "Are the units right?");
    CHECK(faultSentence(englishPhrases(), {IssueCode::Unstable, "", "it can move"}) ==
          "It can move.");
}
