#include "hand/stages/explain.hpp"
#include "hand/stages/sections.hpp"

#include "phrases/working/remarks.hpp"
#include "support/reading/working_reader.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;

namespace {

//  F---G---H      Pratt truss, panels 4 m, 3 m high, 40 kN at each inner bottom joint:
//  |\  |  /|\     reactions 60 kN. Numbers below by sections on paper.
//  A-B-C-D-E      upper joints over B, C, D; end posts inclined A–F, H–E
Truss pratt() {
    Truss truss;
    const char* lower[] = {"A", "B", "C", "D", "E"};
    for (int i = 0; i < 5; ++i) {
        joint(truss, lower[i], 4 * i, 0);
    }
    joint(truss, "F", 4, 3);
    joint(truss, "G", 8, 3);
    joint(truss, "H", 12, 3);
    members(truss, {"AB", "BC", "CD", "DE", "FG", "GH", "AF", "HE", "BF", "CG", "DH"});
    member(truss, "F", "C");
    member(truss, "H", "C");
    pin(truss, "A");
    roller(truss, "E");
    for (const char* label : {"B", "C", "D"}) {
        force(truss, label, 0, -40);
    }
    return truss;
}

MemberId named(const Truss& truss, const char* a, const char* b) {
    return findMember(truss, findJoint(truss, a), findJoint(truss, b));
}

Symbol symbolOf(MemberId member) { return {.kind = SymbolKind::MemberForce, .member = member}; }

const Step& lastStep(const Working& working) { return working.steps.back(); }

template <PartName... Names>
bool hasRemark(const Working& working, Phrase<Names...> phrase) {
    return std::any_of(working.steps.begin(), working.steps.end(), [&](const Step& step) {
        return std::any_of(step.remarks.begin(), step.remarks.end(),
                           [&](const Remark& remark) { return says(remark, phrase); });
    });
}

bool isFoundIn(const std::vector<Found>& found, const Symbol& symbol) {
    return std::any_of(found.begin(), found.end(),
                       [&](const Found& one) { return one.symbol == symbol; });
}

// A step of a chain that neither gives what is asked for nor is used later.
bool hasIdleStep(const Working& chain, const Symbol& asked) {
    for (std::size_t i = 0; i < chain.steps.size(); ++i) {
        const Step& step = chain.steps[i];
        bool needed = step.found.empty() || isFoundIn(step.found, asked);
        for (std::size_t k = i + 1; k < chain.steps.size(); ++k) {
            for (const Symbol& used : chain.steps[k].uses) {
                needed = needed || isFoundIn(step.found, used);
            }
        }
        if (!needed) {
            return true;
        }
    }
    return false;
}

} // namespace

TEST_CASE("a chord member is found by moments about the joint where the other two meet") {
    const Truss truss = pratt();
    const Working working = workSection(truss, {}, solve(truss), named(truss, "B", "C"));
    REQUIRE(working.complete);
    const Step& step = lastStep(working);
    REQUIRE(step.kind == StepKind::SectionEquation);
    CHECK(step.equations[0].kind == EquationKind::SumMoments);
    CHECK(step.joint == findJoint(truss, "F"));
    // About F: F_BC · 3 = 60 · 4
    CHECK(step.found[0].value == 80);
}

TEST_CASE("a diagonal between parallel chords is found by the sum of vertical forces") {
    const Truss truss = pratt();
    const Working working = workSection(truss, {}, solve(truss), named(truss, "F", "C"));
    REQUIRE(working.complete);
    const Step& step = lastStep(working);
    CHECK(step.equations[0].kind == EquationKind::SumY);
    // 60 − 40 = F_FC · 3/5
    CHECK(std::abs(step.found[0].value - 100.0 / 3) < 1e-12);
}

TEST_CASE("a section on demand holds no joint, and no slope that does not occur") {
    const Truss truss = pratt();
    const Working working = workSection(truss, {}, solve(truss), named(truss, "B", "C"));
    CHECK(countSteps(working, StepKind::JointIntro) == 0);
    CHECK(countSteps(working, StepKind::Geometry) == 0);
}

TEST_CASE("a cut through three members gives all three") {
    const Truss truss = pratt();
    const std::vector<MemberId> cut{named(truss, "B", "C"), named(truss, "F", "C"),
                                    named(truss, "F", "G")};
    const Solution solution = solve(truss);
    const Working working = workCut(truss, {}, solution, cut);
    REQUIRE(working.complete);
    CHECK(countSteps(working, StepKind::SectionEquation) == 3);
    CHECK(objectionToChain(truss, working, solution,
                           {symbolOf(cut[0]), symbolOf(cut[1]), symbolOf(cut[2])}) == "");
}

TEST_CASE("each force of a drawn cut has its own equation, the same as for its member alone") {
    const Truss truss = pratt();
    const Solution solution = solve(truss);
    const std::vector<MemberId> cut{named(truss, "B", "C"), named(truss, "F", "C"),
                                    named(truss, "F", "G")};
    const Working working = workCut(truss, {}, solution, cut);
    int compared = 0;
    for (const Step& step : working.steps) {
        if (step.kind != StepKind::SectionEquation) {
            continue;
        }
        for (const Symbol& used : step.uses) {
            CHECK(used.kind == SymbolKind::Reaction); // none of the other two
        }
        const MemberId member = step.found.front().symbol.member;
        const Working alone = workSection(truss, {}, solution, member);
        CHECK(lastStep(alone).equations[0].kind == step.equations[0].kind);
        CHECK(lastStep(alone).equations[0].terms.size() == step.equations[0].terms.size());
        ++compared;
    }
    CHECK(compared == 3);
}

TEST_CASE("the side with fewer forces is looked at, wherever the cut is named from") {
    const Truss truss = pratt();
    const std::vector<MemberId> cut{named(truss, "D", "E"), named(truss, "H", "E")};
    const Working working = workCut(truss, {}, solve(truss), cut);
    REQUIRE(working.complete);
    CHECK(lastStep(working).body == std::vector<JointId>{findJoint(truss, "E")});
}

TEST_CASE("members that do not cut the truss in two are refused, with a cut that would do") {
    const Truss truss = pratt();
    const Working working =
        workCut(truss, {}, solve(truss), {named(truss, "B", "C"), named(truss, "F", "C")});
    CHECK_FALSE(working.complete);
    CHECK(hasRemark(working, phrase::kNotTwoParts));
    REQUIRE(hasRemark(working, phrase::kTryCut));
    for (const Remark& remark : working.steps[0].remarks) {
        if (says(remark, phrase::kTryCut)) {
            const auto& cut = partOf<std::vector<MemberId>>(remark, "members");
            CHECK(workCut(truss, {}, solve(truss), cut).complete);
        }
    }
}

TEST_CASE("a truss without a working has no section, and says so") {
    Truss truss = pratt();
    truss.members.pop_back();
    const Working working = workSection(truss, {}, solve(truss), MemberId{0});
    CHECK_FALSE(working.complete);
    CHECK(hasRemark(working, phrase::kNoWorking));
}

TEST_CASE("every section on demand balances and gives the solver's force") {
    int given = 0;
    int asked = 0;
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        const Truss truss = randomDeterminateTruss(seed);
        const Solution solution = solve(truss);
        for (int i = 0; i < static_cast<int>(truss.members.size()); i += 3) {
            INFO("seed " << seed << ", member " << i);
            const Working working = workSection(truss, {}, solution, MemberId{i});
            ++asked;
            if (working.complete) {
                ++given;
                REQUIRE(objectionToChain(truss, working, solution, {symbolOf(MemberId{i})}) == "");
                REQUIRE(countSteps(working, StepKind::JointEquation) == 0);
            }
        }
    }
    CHECK(2 * given > asked); // most members of most trusses can be reached by a section
}

TEST_CASE("a number is explained by a chain that holds nothing beside the point") {
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        const Truss truss = randomDeterminateTruss(seed);
        const Solution solution = solve(truss);
        for (int i = 0; i < static_cast<int>(truss.members.size()); i += 4) {
            INFO("seed " << seed << ", member " << i);
            const Symbol symbol = symbolOf(MemberId{i});
            const Working chain = explain(truss, {}, solution, symbol);
            REQUIRE(objectionToChain(truss, chain, solution, {symbol}) == "");
            REQUIRE_FALSE(hasIdleStep(chain, symbol));
        }
    }
}

TEST_CASE("a reaction is explained by the equations of the whole alone") {
    Truss truss = pratt();
    force(truss, "B", 0, -1); // not symmetric
    const Solution solution = solve(truss);
    const Symbol reaction{
        .kind = SymbolKind::Reaction, .restraint = {1}, .joint = findJoint(truss, "A")};
    const Working chain = explain(truss, {}, solution, reaction);
    CHECK(objectionToChain(truss, chain, solution, {reaction}) == "");
    CHECK(countSteps(chain, StepKind::JointIntro) == 0);
    CHECK(countSteps(chain, StepKind::ReactionMoment) == 1);
}

TEST_CASE("a member far from the supports is explained by a section, not by all joints before it") {
    const Truss truss = pratt();
    const Working chain = explain(truss, {}, solve(truss), symbolOf(named(truss, "F", "C")));
    CHECK(countSteps(chain, StepKind::SectionEquation) == 1);
    CHECK(countSteps(chain, StepKind::JointEquation) == 0);
}

TEST_CASE("a symmetric truss is worked by one half, and the other half mirrors it") {
    Truss truss = pratt();
    const Solution solution = solve(truss);
    Working working = workOut(truss, {}, solution);
    CHECK(objectionTo(truss, working, solution) == "");
    CHECK(hasRemark(working, phrase::kSymmetric));
    // A, B, F of the left half and those at midspan; never E, D or H.
    for (const Step& step : working.steps) {
        if (step.kind == StepKind::JointIntro) {
            CHECK(truss.joints[step.joint.at()].at.x <= 8);
        }
    }
    // An inclined load, or one on one side only, ends the symmetry.
    force(truss, "C", 1, 0);
    working = workOut(truss, {}, solve(truss));
    CHECK_FALSE(hasRemark(working, phrase::kSymmetric));
    CHECK(objectionToWorkingOf(truss) == "");
    truss = pratt();
    force(truss, "B", 0, -1);
    CHECK_FALSE(hasRemark(workOut(truss, {}, solve(truss)), phrase::kSymmetric));
}
