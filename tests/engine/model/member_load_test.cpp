// Loads on a member between its joints: distributed to the joints, and bending the member.
#include "model/edit/edit.hpp"
#include "model/validate/validate.hpp"
#include "statics/equilibrium/structure.hpp"
#include "support/english.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

using namespace gusset;
using Catch::Matchers::WithinAbs;
using support::joint;
using support::member;

namespace {

// In kN and m.
Truss triangle() { return support::triangle(0); }

constexpr JointId A{0};
constexpr JointId B{1};
constexpr JointId C{2};

void on(Truss& truss, MemberForce force) { truss.loads.push_back({force, {}, {}}); }

double momentOf(const Truss& truss, std::size_t member) {
    return bendingMoments(truss, structureOf(truss), LoadChoice{}).at(member) / 1000;
}

} // namespace

TEST_CASE("A load on a member goes to its joints by the law of the lever") {
    Truss truss = triangle();
    on(truss, {A, B, 1, 2, -12});
    CHECK(validate(truss).errors.empty());
    const std::vector<Vec2> loads = jointLoads(truss, {});
    CHECK(loads[0] == Vec2{1500, -9000}); // 3/4
    CHECK(loads[1] == Vec2{500, -3000});  // 1/4
    truss.loads.clear();
    on(truss, {B, A, 3, 2, -12}); // the same, counted from B
    CHECK(jointLoads(truss, {}) == loads);
}

TEST_CASE("A load between the joints bends the member as a simple beam") {
    Truss truss = triangle();
    CHECK(bendingMoments(truss, structureOf(truss), LoadChoice{}).empty());
    on(truss, {A, B, 1, 0, -12});
    CHECK_THAT(momentOf(truss, 0), WithinAbs(9, 1e-12)); // 12 · 1 · 3 / 4
    CHECK_THAT(momentOf(truss, 1), WithinAbs(0, 1e-12));
    on(truss, {B, A, 1, 0, -12}); // a second one at 3 m: 12 · 1 all the way between the two
    CHECK_THAT(momentOf(truss, 0), WithinAbs(12, 1e-12));
}

TEST_CASE("Only what acts across an inclined member bends it, and upwards is negative") {
    Truss truss = triangle();
    on(truss, {C, B, 2.5, 0, -10});
    // BC is 5 long, slope 3 in 4: across it 10 · 4/5 = 8, in its middle: 8 · 5 / 4.
    CHECK_THAT(momentOf(truss, 1), WithinAbs(10, 1e-12));
    truss.loads.clear();
    on(truss, {C, B, 2.5, 8, -6}); // along the member
    CHECK_THAT(momentOf(truss, 1), WithinAbs(0, 1e-12));
    truss.loads.clear();
    on(truss, {B, C, 2.5, 0, 10});
    CHECK_THAT(momentOf(truss, 1), WithinAbs(-10, 1e-12));
}

TEST_CASE("With a uniform load the largest moment is where the shear is zero") {
    Truss truss = triangle();
    truss.loads.push_back({ChordLoad{{A, B}, -2}, {}, {}});
    CHECK_THAT(momentOf(truss, 0), WithinAbs(4, 1e-12)); // 2 · 4² / 8
    on(truss, {A, B, 1, 0, -2});
    // Left reaction 4 + 1.5; shear 5.5 − 2 − 2x is zero at 1.75: 5.5 · 1.75 − 1.75² − 2 · 0.75.
    CHECK_THAT(momentOf(truss, 0), WithinAbs(5.0625, 1e-12));
    truss.loads.pop_back();
    on(truss, {A, B, 1, 0, -12});
    // Left reaction 13; the shear changes sign under the force: 13 · 1 − 2 · 1² / 2.
    CHECK_THAT(momentOf(truss, 0), WithinAbs(12, 1e-12));
}

TEST_CASE("A load must stand on a member that is there, between its ends") {
    Truss truss = triangle();
    on(truss, {A, B, 4.5, 0, -1});
    REQUIRE(validate(truss).errors.size() == 1);
    CHECK(validate(truss).errors[0].at == "loads[0].at");
    CHECK(support::english(validate(truss).errors[0].says) ==
          "lies beyond the end of member AB: it counts from joint \"A\"");
    truss.members.erase(truss.members.begin());
    CHECK(validate(truss).errors[0].at == "loads[0].member");
    CHECK(support::english(validate(truss).errors[0].says) ==
          "no member joins \"A\" and \"B\": name an existing one");
}

TEST_CASE("A load goes with its member, and stays on the half that it stood on") {
    Truss truss = triangle();
    on(truss, {A, B, 1, 0, -1});
    on(truss, {B, A, 1, 0, -3});
    on(truss, {A, B, 2, 0, -2});
    Things things;
    things.members = {MemberId{0}};
    CHECK(apply(truss, Remove{things}).value().loads.empty());
    things.members = {MemberId{1}};
    CHECK(apply(truss, Remove{things}).value().loads.size() == 3);

    const Truss split = apply(truss, SplitMember{MemberId{0}, {2, 0}}).value();
    const JointId middle{3};
    CHECK(std::get<MemberForce>(split.loads[0].what) == MemberForce{A, middle, 1, 0, -1});
    CHECK(std::get<MemberForce>(split.loads[1].what) == MemberForce{B, middle, 1, 0, -3});
    CHECK(std::get<JointForce>(split.loads[2].what) == JointForce{middle, 0, -2});
    const Truss other = apply(truss, SplitMember{MemberId{0}, {0.5, 0}}).value();
    CHECK(std::get<MemberForce>(other.loads[0].what) == MemberForce{middle, B, 0.5, 0, -1});

    things = {};
    things.joints = {A};
    CHECK(apply(truss, Remove{things}).value().loads.empty());
    things.joints = {C};
    CHECK(apply(truss, Remove{things}).value().loads == truss.loads);
}

TEST_CASE("Joints that become one take along what stood on their members") {
    Truss truss = triangle();
    joint(truss, "D", 4, 3);
    member(truss, "C", "D");
    member(truss, "B", "D");
    on(truss, {C, JointId{3}, 1, 0, -1});
    on(truss, {B, JointId{3}, 1, -1, 0});
    const Truss merged = apply(truss, MergeJoints{JointId{3}, B}).value();
    REQUIRE(merged.loads.size() == 1); // BD is gone, CD is CB
    CHECK(std::get<MemberForce>(merged.loads[0].what) == MemberForce{C, B, 1, 0, -1});
}
