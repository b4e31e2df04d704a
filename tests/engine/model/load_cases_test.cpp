// Load cases renamed, copied and removed as wholes.

#include "model/edit/load_cases.hpp"
#include "statics/equilibrium/structure.hpp"
#include "support/english.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;

namespace {

// The gable with 24 kN that say no case, 8 kN of snow on C and 2 kN on A, and a combination.
Truss snowyGable() {
    Truss truss = gable();
    force(truss, "C", 0, -8, "snow");
    force(truss, "A", 0, -2, "snow");
    truss.cases = {{"snow", "snow", {}}};
    truss.combinations = {{"winter", {{"loads", 1.35}, {"snow", 1.5}}, {}}};
    return truss;
}

Truss after(const Truss& truss, const Edit& edit) { return apply(truss, edit).value(); }

using CaseIds = std::vector<std::string>;

} // namespace

TEST_CASE("a load case is renamed in its loads, its kind and its factors at once") {
    const Truss truss = snowyGable();
    const Truss renamed = after(truss, renameCase(truss, "snow", "winter snow").value());
    CHECK(caseNames(renamed) == CaseIds{"loads", "winter snow"});
    CHECK(renamed.cases.front() == LoadCase{"winter snow", "snow", {}});
    CHECK(renamed.combinations.front().factors[1] ==
          std::pair<std::string, double>{"winter snow", 1.5});
    CHECK(after(renamed, renameCase(renamed, "winter snow", "snow").value()) == truss);
}

TEST_CASE("loads that name no case have a name all the same, which can be changed") {
    const Truss truss = snowyGable();
    const Truss renamed = after(truss, renameCase(truss, "loads", "tiles").value());
    CHECK(caseNames(renamed) == CaseIds{"tiles", "snow"});
    CHECK(renamed.combinations.front().factors[0].first == "tiles");
    CHECK(after(renamed, renameCase(renamed, "tiles", "loads").value()) == truss);
}

TEST_CASE("a case can't be called as another, nor not at all") {
    const Truss truss = snowyGable();
    CHECK(english(renameCase(truss, "snow", "loads").issues().front()).find("already") !=
          std::string::npos);
    CHECK(english(renameCase(truss, "snow", "").issues().front()).find("needs a name") !=
          std::string::npos);
    CHECK(renameCase(truss, "snow", "snow"));
}

TEST_CASE("what a case stands for is set, also where nothing was said of it") {
    const Truss truss = snowyGable();
    CHECK(after(truss, setCaseKind(truss, "snow", "wind")).cases ==
          std::vector<LoadCase>{{"snow", "wind", {}}});
    CHECK(after(truss, setCaseKind(truss, "loads", "permanent")).cases.back() ==
          LoadCase{"loads", "permanent", {}});
}

TEST_CASE("a copy has the same loads and stands for the same, and is in no combination") {
    const Truss truss = snowyGable();
    const Truss copied = after(truss, copyCase(truss, "snow"));
    CHECK(caseNames(copied) == CaseIds{"loads", "snow", "snow 2"});
    CHECK(std::count_if(copied.loads.begin(), copied.loads.end(),
                        [](const Load& load) { return load.caseId == "snow 2"; }) == 2);
    CHECK(copied.cases.back() == LoadCase{"snow 2", "snow", {}});
    CHECK(copied.combinations == truss.combinations);
    CHECK(caseNames(after(copied, copyCase(copied, "snow"))).back() == "snow 3");
    CHECK(after(copied, removeCase(copied, "snow 2")) == truss);
}

TEST_CASE("a case is removed with its loads and its factors") {
    const Truss truss = snowyGable();
    const Truss without = after(truss, removeCase(truss, "loads"));
    CHECK(caseNames(without) == CaseIds{"snow"});
    CHECK(without.combinations.front().factors.size() == 1);
    CHECK(english(describe(truss, removeCase(truss, "snow"))) == "Remove load case snow");
}
