#include "hand/virtual_work/force_method.hpp"
#include "report/derivation/force_method_text.hpp"
#include "report/derivation/influence_by_hand_text.hpp"
#include "report/derivation/working_text.hpp"

#include "support/files.hpp"
#include "support/trusses/worked_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>

using namespace gusset;

namespace {

std::string workedText(const Truss& truss) {
    const Solution solution = solve(truss);
    return truss.title + "\n\n" +
           workingText({englishPhrases(), truss}, workOut(truss, {}, solution));
}

} // namespace

// To change a working on purpose: put what the failure prints into the file, and proofread it.
TEST_CASE("the working of each reviewed truss reads as it was reviewed") {
    for (const auto& [file, truss] : support::workedTrusses()) {
        INFO("tests/data/working/" << file << ".txt");
        CHECK(workedText(truss) == support::repositoryFile("tests/data/working/" + file + ".txt"));
    }
}

TEST_CASE("the force method of each reviewed truss reads as it was reviewed") {
    for (const auto& [file, truss] : support::redundantTrusses()) {
        INFO("tests/data/working/" << file << ".txt");
        const ForceMethod method = forceMethod(truss, {}, solve(truss));
        CHECK(truss.title + "\n\n" +
                  passagesText(forceMethodPassages({englishPhrases(), truss}, method)) ==
              support::repositoryFile("tests/data/working/" + file + ".txt"));
    }
}

TEST_CASE("the influence line of a reviewed truss reads as it was reviewed") {
    for (const auto& [file, truss, path, effect] : support::influenceTrusses()) {
        INFO("tests/data/working/" << file << ".txt");
        const InfluenceByHand line = influenceByHand(truss, path, effect);
        CHECK(truss.title + "\n\n" +
                  passagesText(influencePassages({englishPhrases(), truss}, line)) ==
              support::repositoryFile("tests/data/working/" + file + ".txt"));
    }
}
