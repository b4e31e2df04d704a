#include "model/edit/edit.hpp"

#include "exchange/files/model_file.hpp"
#include "model/validate/findings.hpp"
#include "support/english.hpp"
#include "support/random.hpp"
#include "support/trusses/rich_model.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

using namespace gusset;
using support::joint;
using support::member;

namespace {

Truss triangle() {
    Truss truss = support::triangle(2);
    support::force(truss, "C", 0, -10);
    return truss;
}

Truss done(const Truss& truss, const Edit& edit) {
    Outcome<Truss> after = gusset::apply(truss, edit);
    INFO((after ? std::string() : support::english(after.issues().front())));
    REQUIRE(after.ok());
    return std::move(after).value();
}

std::string refusal(const Truss& truss, const Edit& edit) {
    const Outcome<Truss> after = gusset::apply(truss, edit);
    REQUIRE_FALSE(after.ok());
    return support::english(after.issues().front().says);
}

} // namespace

TEST_CASE("Drawing a member adds the joints that its ends lack") {
    const Truss first = done(Truss{}, DrawMember{{{}, {0, 0}}, {{}, {3, 0}}});
    REQUIRE(first.joints.size() == 2);
    CHECK(first.joints[0].label == "A");
    CHECK(first.joints[1].at == Vec2{3, 0});
    const Truss second = done(first, DrawMember{{JointId{1}, {}}, {{}, {3, 4}}});
    CHECK(second.members.size() == 2);
    CHECK(second.joints[2].label == "C");
    // An end at the position of a joint is that joint.
    const Truss third = done(second, DrawMember{{{}, {3, 4}}, {{}, {0, 0}}});
    CHECK(third.joints.size() == 3);
    CHECK(third.members[2] == Member{JointId{2}, JointId{0}, "", 0, 0, {}, ""});
}

TEST_CASE("A member is not drawn twice, nor from a joint to itself") {
    CHECK(refusal(triangle(), DrawMember{{JointId{1}, {}}, {JointId{0}, {}}}) ==
          "member AB already exists");
    CHECK(refusal(triangle(), DrawMember{{JointId{1}, {}}, {JointId{1}, {}}}).find("different") !=
          std::string::npos);
}

TEST_CASE("A joint moves unless a member would lose its length") {
    CHECK(done(triangle(), MoveJoint{JointId{2}, {1, 5}}).joints[2].at == Vec2{1, 5});
    CHECK(refusal(triangle(), MoveJoint{JointId{2}, {4, 0}}).find("BC has no length") !=
          std::string::npos);
    CHECK_FALSE(apply(triangle(), MoveJoint{JointId{7}, {1, 1}}).ok());
    CHECK_FALSE(apply(triangle(), MoveJoint{JointId{2}, {1, 1e300}}).ok());
}

TEST_CASE("A joint is renamed to a label that no other has") {
    CHECK(done(triangle(), RenameJoint{JointId{2}, "peak"}).joints[2].label == "peak");
    CHECK(done(triangle(), RenameJoint{JointId{2}, "C"}) == triangle());
    CHECK(refusal(triangle(), RenameJoint{JointId{2}, "A"}) ==
          "there is a joint A already: choose another label");
    CHECK_FALSE(apply(triangle(), RenameJoint{JointId{2}, ""}).ok());
}

TEST_CASE("A support replaces what the joint had, and keeps a settlement of its kind") {
    Truss truss = triangle();
    truss.supports[1].settleAlong = -5;
    const Truss turned = done(truss, SetSupport{JointId{1}, SupportKind::Roller, 60});
    CHECK(turned.supports[1].reaction == 60);
    CHECK(turned.supports[1].settleAlong == -5);
    const Truss pinned = done(truss, SetSupport{JointId{1}, SupportKind::Pin});
    REQUIRE(pinned.supports.size() == 2);
    CHECK(pinned.supports[1].kind == SupportKind::Pin);
    CHECK(pinned.supports[1].settleAlong == 0);
    CHECK(done(truss, SetSupport{JointId{2}, SupportKind::Pin}).supports.size() == 3);
    CHECK(done(truss, RemoveSupports{JointId{0}}).supports.size() == 1);
}

TEST_CASE("With a joint go its members, supports and loads, and the others keep their joints") {
    Things things;
    things.joints = {JointId{0}};
    const Truss left = done(triangle(), Remove{things});
    REQUIRE(left.joints.size() == 2);
    CHECK(left.joints[0].label == "B");
    REQUIRE(left.members.size() == 1);
    CHECK(memberName(left, MemberId{0}) == "BC");
    REQUIRE(left.supports.size() == 1);
    CHECK(left.joints[left.supports[0].joint.at()].label == "B");
    REQUIRE(left.loads.size() == 1);
    CHECK(left.joints[jointOf(left.loads[0]).at()].label == "C");
}

TEST_CASE("Chords and paths close over a joint that goes, and go when one joint is left") {
    Truss truss = triangle();
    truss.loads.push_back({ChordLoad{{JointId{0}, JointId{1}, JointId{2}}, -1}, {}, {}});
    truss.moving.push_back({"cart", {JointId{0}, JointId{1}}, {{0, -1, {}}}, {}, {}});
    Things things;
    things.joints = {JointId{1}};
    const Truss left = done(truss, Remove{things});
    REQUIRE(left.loads.size() == 2);
    CHECK(std::get<ChordLoad>(left.loads[1].what).chord ==
          std::vector<JointId>{JointId{0}, JointId{1}}); // A and C, C renumbered
    CHECK(left.moving.empty());
}

TEST_CASE("Members, supports and loads are removed by themselves") {
    Things things;
    things.members = {MemberId{1}, MemberId{1}, MemberId{99}}; // a duplicate, and a missing one
    things.supports = {SupportId{0}};
    things.loads = {LoadId{0}};
    const Truss left = done(triangle(), Remove{things});
    CHECK(left.joints.size() == 3);
    CHECK(left.members.size() == 2);
    CHECK(left.supports.size() == 1);
    CHECK(left.loads.empty());
}

TEST_CASE("Units change alone or with the numbers") {
    Truss truss = triangle();
    truss.sections.push_back({"s", "", 1200, 20, {}, {}, {}});
    truss.loads.push_back({ChordLoad{{JointId{0}, JointId{1}}, -4}, {}, {}});
    Units to = truss.units;
    to.force = ForceUnit::N;
    to.length = LengthUnit::mm;
    to.section = LengthUnit::cm;
    CHECK(done(truss, SetUnits{to, false}).joints[1].at.x == 4);
    const Truss converted = done(truss, SetUnits{to, true});
    CHECK(converted.joints[1].at.x == 4000);
    CHECK(std::get<JointForce>(converted.loads[0].what).fy == -10000);
    CHECK(std::get<ChordLoad>(converted.loads[1].what).perLength == -4); // kN/m = N/mm
    CHECK(converted.sections[0].area == 12);                             // 1200 mm² = 12 cm²
    CHECK(converted.sections[0].radius == 2);
    CHECK(done(converted, SetUnits{truss.units, true}) == truss);
}

TEST_CASE("Loads are added and changed, and one on no joint is refused") {
    const Load load{AngledForce{JointId{1}, 5, 30}, "wind", {}};
    const Truss more = done(triangle(), AddLoad{load});
    CHECK(more.loads[1] == load);
    CHECK(done(more, SetLoad{LoadId{0}, load}).loads[0] == load);
    CHECK_FALSE(apply(triangle(), AddLoad{{JointForce{JointId{3}, 1, 1}, {}, {}}}).ok());
    CHECK_FALSE(apply(triangle(), SetLoad{LoadId{3}, load}).ok());
}

TEST_CASE("Undo calls an edit by what it does") {
    CHECK(said(englishPhrases(), describe(triangle(), MoveJoint{JointId{2}, {}})) ==
          "Move joint C");
    CHECK(said(englishPhrases(), describe(triangle(), SetSupport{JointId{0}, SupportKind::Pin})) ==
          "Pin at A");
    CHECK(said(englishPhrases(),
               describe(triangle(), DrawMember{{JointId{0}, {}}, {JointId{2}, {}}})) ==
          "Draw member AC");
    CHECK(said(englishPhrases(),
               describe(triangle(), AddLoad{{JointForce{JointId{2}, 0, -1}, {}, {}}})) ==
          "Add load at C");
    Things things;
    things.members = {MemberId{1}};
    CHECK(said(englishPhrases(), describe(triangle(), Remove{things})) == "Remove member BC");
    things.joints = {JointId{0}};
    CHECK(said(englishPhrases(), describe(triangle(), Remove{things})) == "Remove 2 things");
    CHECK(said(englishPhrases(), describe(triangle(), ReplaceTruss{{}, "Open example"})) ==
          "Open example");
}

namespace {

Edit randomEdit(const Truss& truss, support::Random& random) {
    const JointId any{random.integer(-1, static_cast<int>(truss.joints.size()))};
    const JointId other{random.integer(-1, static_cast<int>(truss.joints.size()))};
    const Vec2 spot{random.decimal(0, 8, 2), random.decimal(0, 8, 2)};
    Things things;
    switch (random.integer(0, 8)) {
    case 0:
        return AddJoint{spot};
    case 1:
        return MoveJoint{any, spot};
    case 2:
        return RenameJoint{any, random.pick(std::vector<std::string>{"A", "K", "", "q"})};
    case 3:
        return DrawMember{{any, spot}, {other, {spot.y, spot.x}}};
    case 4:
        return SetSupport{any, SupportKind::Roller, random.decimal(0, 180, 1)};
    case 5:
        return AddLoad{{JointForce{any, 1, random.decimal(-9, 9, 2)}, {}, {}}};
    case 6:
        things.joints = {any, other};
        return Remove{things};
    case 7:
        things.members = {MemberId{any.index}};
        return Remove{things};
    default:
        return SetUnits{Units{}, random.oneIn(2)};
    }
}

} // namespace

TEST_CASE("Whatever edits do, the model stays one that can be saved and opened") {
    support::Random random(7);
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        Truss truss = support::randomRichTruss(seed);
        for (int step = 0; step < 60; ++step) {
            const Outcome<Truss> after = gusset::apply(truss, randomEdit(truss, random));
            if (after.ok()) {
                truss = after.value();
            } else {
                CHECK_FALSE(after.issues().front().says.empty());
            }
        }
        INFO("seed " << seed);
        CHECK(errorsOf(truss).empty());
        CHECK(readModel(writeModel(truss)).ok());
    }
}
