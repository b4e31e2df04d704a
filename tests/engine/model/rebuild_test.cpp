#include "model/edit/edit.hpp"
#include "statics/solve/solution.hpp"
#include "support/english.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

using namespace gusset;
using Catch::Matchers::WithinRel;
using support::memberAt;
using support::roof;

namespace {

Truss edited(const Truss& truss, const Edit& edit) {
    Outcome<Truss> after = gusset::apply(truss, edit);
    INFO((after ? std::string() : support::english(after.issues().front().says)));
    REQUIRE(after.ok());
    return std::move(after).value();
}

double forceIn(const Truss& truss, const char* a, const char* b) {
    const Solution solution = solve(truss);
    REQUIRE(solution.status == Status::Determinate);
    return solution.forces[memberAt(truss, a, b)];
}

MemberEnd onMember(int member, Vec2 at) { return {{}, at, MemberId{member}}; }

} // namespace

TEST_CASE("a member drawn to the middle of another splits it, and both halves carry its force") {
    const Truss after = edited(roof(), DrawMember{{JointId{2}, {}}, onMember(0, {3, 0})});
    CHECK(after.joints.size() == 4);
    CHECK(after.members.size() == 5);
    CHECK_THAT(forceIn(after, "A", "D"), WithinRel(3750, 1e-9));
    CHECK_THAT(forceIn(after, "D", "B"), WithinRel(3750, 1e-9));
    CHECK(std::abs(forceIn(after, "C", "D")) < 1e-6); // no load at D: a zero-force member
}

TEST_CASE("both halves of a split member keep its section, and the first its misfit") {
    Truss truss = roof();
    truss.sections = {{"tie", "", 1200.0, {}, "", {}, ""}};
    truss.members[0].section = "tie";
    truss.members[0].warming = 20;
    truss.members[0].misfit = 2;
    const Truss after = edited(truss, SplitMember{MemberId{0}, {2, 0}});
    const Member& first = after.members[0];
    const Member& second = after.members.back();
    CHECK(first.a == JointId{0});
    CHECK(first.b == second.a);
    CHECK(second.b == JointId{1});
    CHECK(second.section == "tie");
    CHECK(second.warming == 20);
    CHECK(first.misfit + second.misfit == 2);
}

TEST_CASE(
    "chords and paths along a member run through the joint that splits it, either way round") {
    Truss truss = roof();
    truss.loads.push_back({ChordLoad{{JointId{1}, JointId{0}}, -2}, {}, {}});
    truss.moving = {{"cart", {JointId{0}, JointId{1}}, {{0, -1, {}}}, {}, {}}};
    const Truss after = edited(truss, SplitMember{MemberId{0}, {2, 0}});
    CHECK(std::get<ChordLoad>(after.loads[1].what).chord ==
          std::vector{JointId{1}, JointId{3}, JointId{0}});
    CHECK(after.moving[0].path == std::vector{JointId{0}, JointId{3}, JointId{1}});
}

TEST_CASE("a member can't be drawn along the one that it starts and ends on") {
    const Outcome<Truss> after =
        apply(roof(), DrawMember{onMember(0, {1, 0}), onMember(0, {2, 0})});
    REQUIRE_FALSE(after.ok());
    CHECK(support::english(after.issues().front().says).find("AB") != std::string::npos);
}

TEST_CASE("joints that are merged bring their members, supports and loads together") {
    Truss truss = roof();
    support::joint(truss, "D", 6.2, 0.1);
    support::joint(truss, "E", 9, 4);
    support::member(truss, "D", "E");
    support::member(truss, "E", "C");
    support::member(truss, "D", "C"); // will lie on BC
    support::force(truss, "D", 0, -5);
    support::roller(truss, "D");
    const Truss after = edited(truss, MergeJoints{JointId{3}, JointId{1}});
    CHECK(after.joints.size() == 4);
    CHECK(after.members.size() == 5);
    CHECK(after.supports.size() == 2);
    CHECK(jointOf(after.loads.back()) == JointId{1});
    CHECK(after.joints[1].at == Vec2{6, 0});
    CHECK(findMember(after, JointId{1}, findJoint(after, "E")).valid());
    CHECK(solve(after).status == Status::Determinate);
}

TEST_CASE("merging the joint that split a member gives the member back") {
    const Truss split = edited(roof(), SplitMember{MemberId{0}, {2, 0}});
    CHECK(edited(split, MergeJoints{JointId{3}, JointId{1}}) == roof());
}

TEST_CASE("half a truss and its mirror image make a whole one with mirrored forces") {
    Truss half;
    support::joint(half, "A", 0, 0);
    support::joint(half, "B", 3, 0);
    support::joint(half, "C", 6, 0);
    support::joint(half, "D", 3, 2);
    support::joint(half, "E", 6, 4);
    for (const auto& [a, b] : {std::pair{"A", "B"},
                               {"B", "C"},
                               {"A", "D"},
                               {"D", "E"},
                               {"B", "D"},
                               {"D", "C"},
                               {"C", "E"}}) {
        support::member(half, a, b);
    }
    support::force(half, "D", 1, -10);
    CopyThings copy;
    for (int i = 0; i < 7; ++i) {
        copy.things.members.push_back(MemberId{i});
    }
    copy.things.loads = {LoadId{0}};
    copy.placements = {{{-1, 0}, {0, 1}, {12, 0}}};
    Truss whole = edited(half, copy);
    CHECK(whole.joints.size() == 8);   // C and E are their own images
    CHECK(whole.members.size() == 13); // so is CE
    REQUIRE(whole.loads.size() == 2);
    CHECK(forceOf(whole.loads[1]) == Vec2{-1, -10});
    support::pin(whole, "A");
    support::roller(whole, "F"); // A's image is the first new joint
    CHECK(whole.joints[5].at == Vec2{12, 0});
    const Solution solution = solve(whole);
    REQUIRE(solution.status == Status::Determinate);
    for (std::size_t i = 0; i < 6; ++i) { // the copies are in the order of the originals
        CHECK_THAT(solution.forces[7 + i], WithinRel(solution.forces[i], 1e-9));
    }
}

TEST_CASE("a panel copied along its chord shares the joints between the copies") {
    Truss panel;
    support::joint(panel, "A", 0, 0);
    support::joint(panel, "B", 3, 0);
    support::joint(panel, "C", 0, 3);
    support::joint(panel, "D", 3, 3);
    for (const auto& [a, b] :
         {std::pair{"A", "B"}, {"C", "D"}, {"A", "C"}, {"B", "D"}, {"A", "D"}}) {
        support::member(panel, a, b);
    }
    CopyThings copy;
    for (int i = 0; i < 5; ++i) {
        copy.things.members.push_back(MemberId{i});
    }
    for (int i = 1; i <= 3; ++i) {
        copy.placements.push_back({{1, 0}, {0, 1}, {3.0 * i, 0}});
    }
    Truss row = edited(panel, copy);
    CHECK(row.joints.size() == 10);
    CHECK(row.members.size() == 17); // four per panel, and the last post
    support::pin(row, "A");
    support::roller(row, row.joints[8].label);
    CHECK(solve(row).status == Status::Determinate);
}

TEST_CASE("a copy that is turned refuses a chord load, which acts straight down, and says so") {
    Truss truss = roof();
    truss.loads = {{ChordLoad{{JointId{0}, JointId{2}}, -5}, "", {}}};
    CopyThings copy;
    copy.things.joints = {JointId{0}, JointId{2}};
    copy.things.loads = {LoadId{0}};
    copy.placements = {{{0, 1}, {-1, 0}, {20, 0}}};
    const Outcome<Truss> after = apply(truss, copy);
    REQUIRE_FALSE(after.ok());
    CHECK(support::english(after.issues().front().says).find("straight up or down") !=
          std::string::npos);
}

TEST_CASE("several joints move as one edit, each to its place") {
    const Truss after = edited(roof(), MoveJoints{{JointId{0}, JointId{1}}, {{0, 1}, {6, 1}}});
    CHECK(after.joints[0].at == Vec2{0, 1});
    CHECK(after.joints[1].at == Vec2{6, 1});
    CHECK(after.joints[2].at == Vec2{3, 4});
}

TEST_CASE("undo names splitting, merging and copying after what they were edited to") {
    CHECK(said(englishPhrases(), describe(roof(), SplitMember{MemberId{0}, {1, 0}})) ==
          "Joint on member AB");
    CHECK(said(englishPhrases(), describe(roof(), MergeJoints{JointId{2}, JointId{0}})) ==
          "Merge joint C into A");
    CHECK(said(englishPhrases(), describe(roof(), MoveJoints{{JointId{2}}, {{1, 1}}})) ==
          "Move joint C");
    CHECK(said(englishPhrases(),
               describe(roof(), MoveJoints{{JointId{1}, JointId{2}}, {{1, 1}, {2, 2}}})) ==
          "Move 2 joints");
}

TEST_CASE("edits of things that are gone are refused and change nothing") {
    CHECK_FALSE(apply(roof(), SplitMember{MemberId{9}, {1, 1}}).ok());
    CHECK_FALSE(apply(roof(), MergeJoints{JointId{9}, JointId{0}}).ok());
    CHECK_FALSE(apply(roof(), MoveJoints{{JointId{9}}, {{1, 1}}}).ok());
    CHECK_FALSE(apply(roof(), CopyThings{{{}, {MemberId{9}}, {}, {}}, {Placement{}}}).ok());
    CHECK_FALSE(apply(roof(), DrawMember{{JointId{2}, {}}, onMember(9, {3, 0})}).ok());
}
