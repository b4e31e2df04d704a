// What undo calls each kind of edit, in any language.

#include "model/edit/edit.hpp"
#include "model/edit/load_cases.hpp"
#include "statics/equilibrium/structure.hpp"
#include "support/reading/mock_language.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

const JointId kA{0};
const JointId kB{1};
const MemberId kFirst{0};
const MemberId kNoMember{};

Truss named() {
    Truss truss = roof();
    truss.materials.emplace_back().id = "S1";
    truss.sections.emplace_back().id = "T1";
    truss.combinations.push_back({"C1", {}, {}});
    truss.moving.emplace_back().id = "V1";
    return truss;
}

std::vector<Edit> editsOfShape(const Truss& truss) {
    return {AddJoint{},
            MoveJoint{kA, {}, {}},
            MoveJoints{{kA}, {{}}, {}},
            MoveJoints{{kA, kB}, {{}, {}}, {}},
            MergeJoints{kA, kB},
            RenameJoint{kA, "Q"},
            DrawMember{{kA, {}, {}}, {kB, {}, {}}},
            DrawMember{{kA, {}, {}}, {{}, {}, {}}},
            SplitMember{kFirst, {}},
            SplitMember{kNoMember, {}},
            SetMember{kFirst, truss.members[0]},
            SetMember{kNoMember, truss.members[0]},
            CopyThings{{}, {{}}, {}},
            CopyThings{{}, {{}, {}}, {}}};
}

std::vector<Edit> editsOfThings(const Truss& truss) {
    Load weight;
    weight.what = SelfWeight{};
    return {SetSupport{kA, SupportKind::Pin, 90},
            SetSupport{kA, SupportKind::Roller, 90},
            ChangeSupport{SupportId{0}, truss.supports[0]},
            RemoveSupports{kA},
            AddLoad{truss.loads[0]},
            AddLoad{weight},
            SetLoad{LoadId{0}, truss.loads[0]},
            SetLoad{LoadId{0}, weight},
            Remove{{{kA}, {}, {}, {}}},
            Remove{{{}, {kFirst}, {}, {}}},
            Remove{{{}, {}, {SupportId{0}}, {}}},
            Remove{{{}, {}, {}, {LoadId{0}}}},
            Remove{{{kA, kB}, {}, {}, {}}}};
}

std::vector<Edit> editsOfLists(Truss truss) {
    std::vector<Combination> combinations = truss.combinations;
    std::vector<MovingLoad> moving = truss.moving;
    combinations.push_back({"C2", {}, {}});
    moving.emplace_back().id = "V2";
    std::vector<Edit> edits{SetCombinations{combinations}, SetCombinations{truss.combinations},
                            SetCombinations{{}},           SetMovingLoads{moving},
                            SetMovingLoads{truss.moving},  SetMovingLoads{{}}};
    truss.combinations.front().id = "C3"; // in place of the first
    truss.moving.front().id = "V3";
    edits.emplace_back(SetCombinations{truss.combinations});
    edits.emplace_back(SetMovingLoads{truss.moving});
    edits.push_back(renameCase(truss, caseNames(truss).front(), "G").value());
    edits.push_back(setCaseKind(truss, caseNames(truss).front(), "snow"));
    edits.push_back(copyCase(truss, caseNames(truss).front()));
    edits.push_back(removeCase(truss, caseNames(truss).front()));
    return edits;
}

std::vector<Edit> otherEdits(const Truss& truss) {
    return {SetMaterial{0, truss.materials[0]},
            SetMaterial{1, truss.materials[0]},
            RemoveMaterial{0},
            SetSection{0, truss.sections[0]},
            SetSection{1, truss.sections[0]},
            RemoveSection{0},
            UseSection{{kFirst}, "T1"},
            WarmMembers{{kFirst}, 20},
            WarmMembers{{kFirst, MemberId{1}}, 20},
            FactorMembers{{kFirst}, true, 0.8},
            FactorMembers{{kFirst, MemberId{1}}, false, {}},
            SetTitle{"Q"},
            SetUnits{},
            SetClassSettings{},
            SetChecks{},
            ReplaceTruss{{}, "Q1"}};
}

} // namespace

TEST_CASE("in a language made up for it, the name of no edit keeps an English word") {
    const Truss truss = named();
    std::set<std::size_t> kinds;
    std::set<std::string> names;
    std::size_t count = 0;
    for (const auto& edits :
         {editsOfShape(truss), editsOfThings(truss), editsOfLists(truss), otherEdits(truss)}) {
        for (const Edit& edit : edits) {
            const std::string name = said(mockPhrases(), describe(truss, edit));
            CAPTURE(said(englishPhrases(), describe(truss, edit)), name);
            CHECK_FALSE(name.empty());
            CHECK(foreignWords(name, truss) == std::vector<std::string>{});
            kinds.insert(edit.kind().index());
            names.insert(name);
            ++count;
        }
    }
    CHECK(kinds.size() == std::variant_size_v<EditKind>);
    CHECK(names.size() == count - 1); // moving one joint has one name, by either edit
}
