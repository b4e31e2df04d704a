// Why a force has its value: chains of steps that must be complete in themselves.
#include "hand/stages/explain.hpp"
#include "phrases/working/remarks.hpp"
#include "report/derivation/working_text.hpp"

#include "support/files.hpp"
#include "support/reading/printed_working.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/worked_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;

namespace {

template <PartName... Names>
bool says(const Step& step, Phrase<Names...> phrase) {
    return std::any_of(step.remarks.begin(), step.remarks.end(),
                       [&](const Remark& remark) { return gusset::says(remark, phrase); });
}

bool findsNegative(const Step& step) {
    return std::any_of(step.found.begin(), step.found.end(), [](const Found& found) {
        return found.symbol.kind == SymbolKind::MemberForce && found.value * found.drawn < 0;
    });
}

// The first thing that a reader of the chain alone would have to ask; or empty.
std::string openQuestion(const Working& chain, Phrase<> assumed) {
    bool drawn = false;
    bool negative = false;
    bool symmetric = false;
    for (const Step& step : chain.steps) {
        drawn = drawn || says(step, assumed);
        const bool cut = step.kind == StepKind::SectionIntro && !says(step, phrase::kTakenApart);
        const bool unknowns =
            cut || step.kind == StepKind::JointIntro || step.kind == StepKind::Simultaneous;
        if (unknowns && !drawn) {
            return "how are the forces drawn?";
        }
        symmetric = symmetric || says(step, phrase::kSymmetric);
        if (says(step, phrase::kBySymmetry) && !symmetric) {
            return "what is symmetric?";
        }
        negative = negative || says(step, phrase::kNegativeForce);
        if (findsNegative(step) && !negative) {
            return "what does the negative force mean?";
        }
    }
    return {};
}

std::string printed(const Truss& truss, const Working& working) {
    return workingText({englishPhrases(), truss}, working);
}

} // namespace

TEST_CASE("the chain of every member of random trusses reads complete by itself") {
    int negative = 0;
    for (int seed = 0; seed < 200; ++seed) {
        Truss truss = randomDeterminateTruss(static_cast<std::uint64_t>(seed));
        truss.classSettings.senses = seed % 4 == 3 ? AssumedSense::Guessed : AssumedSense::Tension;
        const Phrase<> assumed = seed % 4 == 3 ? phrase::kAssumedGuessed : phrase::kAssumedAway;
        const Solution solution = solve(truss);
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            const Symbol symbol{.kind = SymbolKind::MemberForce, .member = {static_cast<int>(i)}};
            const Working chain = explain(truss, {}, solution, symbol);
            const std::string text = printed(truss, chain);
            INFO("seed " << seed << '\n' << text);
            REQUIRE(openQuestion(chain, assumed) == "");
            const PrintedReading reading =
                readPrintedText(text, truss, solution, PrintedExtent::Chain);
            REQUIRE(reading.objection == "");
            REQUIRE(reading.results > 0);
            negative += std::any_of(chain.steps.begin(), chain.steps.end(), findsNegative);
        }
    }
    CHECK(negative > 500);
}

// To change it on purpose: put what the failure prints into the file, and proofread it.
TEST_CASE("the chain of the post of the shed roof reads as it was reviewed") {
    const Truss truss = workedTrusses().front().truss;
    const MemberId post = findMember(truss, findJoint(truss, "C"), findJoint(truss, "F"));
    const Working chain =
        explain(truss, {}, solve(truss), {.kind = SymbolKind::MemberForce, .member = post});
    CHECK(truss.title + ": why F_CF?\n\n" + printed(truss, chain) ==
          repositoryFile("tests/data/working/why_post_of_shed_roof.txt"));
}
