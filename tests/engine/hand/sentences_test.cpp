// Whether the sentences of a working are true of its truss (support/reading/sentence_truth).
#include "hand/paper/working.hpp"
#include "phrases/working/remarks.hpp"
#include "report/derivation/working_text.hpp"

#include "support/random.hpp"
#include "support/reading/sentence_truth.hpp"
#include "support/reading/solving_truth.hpp"
#include "support/trusses/loaded_truss.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using namespace gusset::support;

TEST_CASE("every sentence about symmetry, zero forces, places and the count is true of its truss") {
    SentenceCounts counts;
    SolvingCounts solving;
    for (std::uint64_t seed = 0; seed < 2000; ++seed) {
        CAPTURE(seed);
        Truss truss = seed % 2 == 0 ? usualForm(seed) : randomDeterminateTruss(seed);
        if (seed % 2 != 0) {
            Random random(seed);
            addLoadsOfEveryKind(truss, random);
        }
        CHECK(falseSentence(truss, counts) == "");
        CHECK(falseSolving(truss, workOut(truss, {}, solve(truss)), solving) == "");
    }
    CAPTURE(counts.symmetric, counts.together, counts.zeros, counts.leftOut, counts.places,
            counts.inclined, counts.shared, counts.halves);
    CHECK(counts.symmetric > 40);
    CHECK(counts.together > 5);
    CHECK(counts.zeros > 1000);
    CHECK(counts.leftOut > 100);
    CHECK(counts.places > 20);
    CHECK(counts.inclined > 50);
    CHECK(counts.shared > 200);
    CHECK(solving.across > 100);
    CHECK(solving.turned > 50);
    CHECK(solving.eliminated + solving.substituted + solving.equal > 500);
    CHECK(counts.halves > 50);
}

TEST_CASE("reactions are halves of the load only where the loads themselves are symmetric") {
    Truss truss = gable();
    const auto halves = [&] {
        int count = 0;
        for (const Step& step : workOut(truss, {}, solve(truss)).steps) {
            for (const Remark& remark : step.remarks) {
                count += says(remark, phrase::kReactionsMirror) ? 1 : 0;
            }
        }
        return count;
    };
    CHECK(halves() == 1);
    force(truss, "A", 0, -3);
    CHECK(halves() == 0);
    truss.loads.pop_back();
    truss.supports.back().reaction = 60; // B no longer mirrors A
    CHECK(halves() == 0);
}

//     C        A roof with 10 kN at A and 20 kN at B, over its supports: each goes straight into
//    /|\       its own, and what the members feel is the same on both sides.
//   A-D-B
TEST_CASE("a truss whose loads and reactions differ from side to side is not called symmetric") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 8, 0);
    joint(truss, "C", 4, 3);
    joint(truss, "D", 4, 0);
    joint(truss, "E", 2, 1.5);
    joint(truss, "F", 6, 1.5);
    members(truss, {"AD", "DB", "AE", "EC", "CF", "FB", "CD", "ED", "FD"});
    pin(truss, "A");
    roller(truss, "B");
    force(truss, "C", 0, -12);
    force(truss, "A", 0, -10);
    force(truss, "B", 0, -20);
    const Working working = workOut(truss, {}, solve(truss));
    int found = 0;
    for (const Step& step : working.steps) {
        for (const Remark& remark : step.remarks) {
            CHECK_FALSE(says(remark, phrase::kSymmetric));
            if (says(remark, phrase::kSymmetricTogether)) {
                ++found;
                const auto joints = partOf<std::vector<JointId>>(remark, "joints");
                CHECK(joints == std::vector{JointId{0}, JointId{1}});
            }
        }
    }
    CHECK(found == 1);
}

namespace {

std::string workingUnder(const Truss& truss, const LoadChoice& choice) {
    return workingText({englishPhrases(), truss}, workOut(truss, choice, solve(truss, choice)));
}

} // namespace

TEST_CASE("a working says which loads act: a case, a combination with its factors, or all cases") {
    Truss truss = gable(); // 24 kN down at C
    truss.loads.front().caseId = "dead";
    const auto has = [](const std::string& text, const char* words) {
        return text.find(words) != std::string::npos;
    };
    CHECK_FALSE(has(workingUnder(truss, {}), "The loads"));
    force(truss, "C", 6, 0, "wind");
    Combination storm;
    storm.id = "storm";
    storm.factors = {{"dead", 1}, {"wind", 1.5}};
    truss.combinations.push_back(storm);
    CHECK(has(workingUnder(truss, {}),
              "The loads of all cases act together, each with a factor of 1: dead and wind."));
    CHECK(has(workingUnder(truss, OneCase{"wind"}), "The loads are those of the case wind alone."));
    CHECK(has(workingUnder(truss, OneCombination{"storm"}),
              "The loads are those of the combination storm: 1 × dead and 1.5 × wind."));
}

// 10 kN at 30° below the horizontal, to the left: 10 cos 30° = 8.66 and 10 sin 30° = 5.
TEST_CASE("an inclined load is resolved before the reader's eyes") {
    Truss truss = gable();
    truss.loads.clear();
    truss.loads.push_back({AngledForce{truss.members.front().b, 10, 210}, {}, {}});
    const std::string text = workingUnder(truss, {});
    CHECK(text.find("acts at 30° to the horizontal, down to the left: 10\u2009kN · cos 30° to the "
                    "left and 10\u2009kN · sin 30° down.") != std::string::npos);
    CHECK(text.find("P_Cx \u2248 8.66\u2009kN to the left and P_Cy = 5\u2009kN down") !=
          std::string::npos);
}
