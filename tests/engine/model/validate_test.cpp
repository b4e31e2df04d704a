#include "model/validate/validate.hpp"

#include "model/validate/findings.hpp"
#include "support/english.hpp"
#include "support/trusses/rich_model.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <limits>

using namespace gusset;
using support::joint;
using support::member;

namespace {

Truss soundTriangle() { return support::triangle(2); }

std::string firstFault(const Truss& truss) {
    const Findings findings = validate(truss);
    REQUIRE_FALSE(findings.errors.empty());
    return support::english(findings.errors.front());
}

std::string firstNote(const Truss& truss) {
    const Findings findings = validate(truss);
    REQUIRE(findings.errors.empty());
    REQUIRE_FALSE(findings.notes.empty());
    return support::english(findings.notes.front());
}

} // namespace

TEST_CASE("A sound truss has neither errors nor notes") {
    CHECK(validate(soundTriangle()).errors.empty());
    CHECK(validate(soundTriangle()).notes.empty());
    CHECK(validate(Truss{}).errors.empty());
}

TEST_CASE("Labels are there, short, alone, and without control characters") {
    Truss truss = soundTriangle();
    truss.joints[2].label = "";
    CHECK(firstFault(truss) == "joints[2].id: this name is empty: give it a name");
    truss.joints[2].label = "A";
    CHECK(firstFault(truss) == "joints[2].id: \"A\" already exists: give each its own name");
    truss.joints[2].label = std::string(41, 'x');
    CHECK(firstFault(truss).find("longer than 40 characters") != std::string::npos);
    truss.joints[2].label = "a\nb";
    CHECK(firstFault(truss).find("control character") != std::string::npos);
    truss.joints[2].label = "\xC3\x28";
    CHECK(firstFault(truss).find("not UTF-8") != std::string::npos);
    std::string forty;
    for (int i = 0; i < 40; ++i) {
        forty += "ü"; // 80 bytes, 40 characters
    }
    truss.joints[2].label = forty;
    CHECK(validate(truss).errors.empty());
}

TEST_CASE("Every number must be one to compute with") {
    const double bad[] = {std::numeric_limits<double>::quiet_NaN(),
                          std::numeric_limits<double>::infinity(), -1e101};
    for (const double number : bad) {
        Truss truss = soundTriangle();
        truss.joints[1].at.y = number;
        CHECK(firstFault(truss).starts_with("joints[1].y: "));
        truss = soundTriangle();
        truss.members[2].misfit = number;
        CHECK(firstFault(truss).starts_with("members[2].misfit: "));
        truss = soundTriangle();
        truss.supports[1].reaction = number;
        CHECK(firstFault(truss).starts_with("supports[1].reaction: "));
        truss = soundTriangle();
        support::force(truss, "C", 0, number);
        CHECK(firstFault(truss).starts_with("loads[0].fy: "));
        truss = soundTriangle();
        truss.materials.push_back({"steel", number, {}, {}, {}, {}});
        CHECK(firstFault(truss).starts_with("materials[0].E: "));
    }
}

TEST_CASE("Zero or negative stiffness, area or strength is refused") {
    Truss truss = soundTriangle();
    truss.materials.push_back({"steel", 0, {}, {}, {}, {}});
    CHECK(firstFault(truss) == "materials[0].E: must be greater than 0");
    truss.materials[0].E = 210000;
    truss.sections.push_back({"chord", "steel", -1, {}, {}, {}, {}});
    CHECK(firstFault(truss) == "sections[0].A: must be greater than 0");
}

TEST_CASE("Members need two joints apart from each other, and one member is enough") {
    Truss truss = soundTriangle();
    truss.joints[1].at = {0, 0};
    CHECK(firstFault(truss) ==
          "members[0]: member AB has no length: move one of its joints apart from the other");
    truss.joints[1].at = {0, 1e-10}; // against an extent of 3: no meaningful direction
    CHECK_FALSE(validate(truss).errors.empty());
    truss = soundTriangle();
    member(truss, "B", "A");
    CHECK(firstFault(truss) ==
          "members[3]: member BA already exists as members[0]: remove one of the two");
}

TEST_CASE("Paths and chords need two joints, each named once") {
    Truss truss = soundTriangle();
    truss.loads.push_back({ChordLoad{{JointId{0}}, -1}, {}, {}});
    CHECK(firstFault(truss) == "loads[0].chord: needs at least two joints");
    truss = soundTriangle();
    truss.moving.push_back({"cart", {JointId{0}, JointId{1}, JointId{0}}, {{0, -1, {}}}, {}, {}});
    CHECK(firstFault(truss).starts_with("moving[0].path[2]: joint \"A\" appears twice"));
}

TEST_CASE("Two axles at one place, and a moving load without a load, are refused") {
    Truss truss = soundTriangle();
    truss.moving.push_back({"cart", {JointId{0}, JointId{1}}, {{0, -1, {}}, {0, -2, {}}}, {}, {}});
    CHECK(firstFault(truss) == "moving[0].axles[1].at: another axle is at the same place: "
                               "combine the two");
    truss.moving[0].axles.clear();
    CHECK(firstFault(truss) == "moving[0]: has no load: give it \"axles\" or \"uniform\"");
    truss.moving[0].uniform = MovingUniform{-4, 0.0, {}};
    CHECK(firstFault(truss) == "moving[0].uniform.length: must be greater than 0");
}

TEST_CASE("A path on which no load can move is noted with the place where it stops") {
    Truss truss = soundTriangle();
    joint(truss, "D", 6, 0);
    member(truss, "C", "D");
    truss.moving.push_back({"cart", {}, {{0, -1, {}}}, {}, {}});
    truss.moving[0].path = {JointId{0}, JointId{1}, JointId{3}};
    CHECK(firstNote(truss) == "moving[0].path[2]: no member joins B and D: name the joints that "
                              "the load passes, one after the other");
    truss.moving[0].path = {JointId{0}, JointId{1}, JointId{2}};
    CHECK(firstNote(truss) == "moving[0].path[2]: the path turns back or upright between B and C: "
                              "let it lead on to one side");
    truss.moving[0].path = {JointId{0}, JointId{2}, JointId{3}};
    CHECK(firstNote(truss).find("moving[0].path") == std::string::npos);
}

TEST_CASE("Loose joints, joints on one spot and members through joints are noted") {
    Truss truss = soundTriangle();
    joint(truss, "D", 9, 9);
    CHECK(firstNote(truss) == "joints[3]: joint D has no member: join it or remove it");
    member(truss, "C", "D");
    truss.joints[3].at = {4, 0};
    CHECK(firstNote(truss) == "joints[3]: joints B and D lie on one spot and are not connected "
                              "there: make them one joint");
    truss.joints[3].at = {2, 0};
    CHECK(firstNote(truss) == "members[0]: member AB runs through joint D without being joined to "
                              "it: split it there if they meet");
}

TEST_CASE("Crossing members are noted, those that meet at a joint are not") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 0, 3);
    joint(truss, "C", 4, 0);
    joint(truss, "D", 4, 3);
    member(truss, "A", "D");
    member(truss, "B", "C");
    CHECK(firstNote(truss) ==
          "members[1]: members AD and BC cross: they are taken to pass without touching");
    CHECK(suspicious(truss).size() == 1);
    CHECK(suspicious(soundTriangle()).empty());
}

TEST_CASE("The search for crossings agrees with trying every pair") {
    // A double-braced strip: in each panel the two diagonals cross, and nothing else does.
    const Truss strip = support::stripTruss(support::Web::Double, 15);
    CHECK(suspicious(strip).size() == 15);
}

TEST_CASE("What is kept and not computed is noted") {
    Truss truss = soundTriangle();
    truss.moving.push_back({"cart", {JointId{0}, JointId{1}}, {{0, -8, {}}}, {}, {}});
    CHECK(firstNote(truss).starts_with("moving: "));
    CHECK(validate(truss).notes.front().code == IssueCode::NotComputed);
}

TEST_CASE("Rich random models are valid") {
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        INFO("seed " << seed);
        CHECK(validate(support::randomRichTruss(seed)).errors.empty());
    }
}
