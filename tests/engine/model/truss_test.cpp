#include "model/truss/truss.hpp"

#include "model/catalogue/section_shapes.hpp"
#include "model/truss/units.hpp"
#include "support/english.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <cmath>
#include <numbers>

using namespace gusset;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using support::joint;
using support::member;

TEST_CASE("Joints are called A to Z, then A1 to Z1, and so on") {
    CHECK(defaultLabel(0) == "A");
    CHECK(defaultLabel(25) == "Z");
    CHECK(defaultLabel(26) == "A1");
    CHECK(defaultLabel(53) == "B2");
}

TEST_CASE("A new joint gets the first label that none has") {
    Truss truss;
    CHECK(nextLabel(truss) == "A");
    joint(truss, "A", 0, 0);
    joint(truss, "C", 1, 0);
    CHECK(nextLabel(truss) == "B");
    joint(truss, "B", 2, 0);
    CHECK(nextLabel(truss) == "D");
}

TEST_CASE("A member is found from either end and named by its joints") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 3, 4);
    joint(truss, "C12", 0, 4);
    member(truss, "A", "B");
    member(truss, "C12", "B");
    CHECK(findMember(truss, JointId{1}, JointId{0}) == MemberId{0});
    CHECK_FALSE(findMember(truss, JointId{0}, JointId{2}).valid());
    CHECK(memberName(truss, MemberId{0}) == "AB");
    CHECK(memberName(truss, MemberId{1}) == "C12–B");
    CHECK(memberName("1", "2") == "1–2"); // 12 would be a number, and A1 a joint
    CHECK(memberName("A", "1") == "A–1");
    CHECK(memberVector(truss, MemberId{0}) == Vec2{3, 4});
    CHECK(findJoint(truss, "C12") == JointId{2});
    CHECK_FALSE(findJoint(truss, "D").valid());
}

TEST_CASE("The extent is the box around the joints") {
    Truss truss;
    CHECK(extent(truss).high == Vec2{});
    joint(truss, "A", -1, 2);
    joint(truss, "B", 3, -4);
    CHECK(extent(truss).low == Vec2{-1, -4});
    CHECK(extent(truss).high == Vec2{3, 2});
}

TEST_CASE("Directions are exact at the multiples of 30, 45 and 90 degrees") {
    const double root3 = std::numbers::sqrt3 / 2;
    const double root2 = std::numbers::sqrt2 / 2;
    CHECK(directionOf(0) == Vec2{1, 0});
    CHECK(directionOf(90) == Vec2{0, 1});
    CHECK(directionOf(180) == Vec2{-1, 0});
    CHECK(directionOf(-90) == Vec2{0, -1});
    CHECK(directionOf(30) == Vec2{root3, 0.5});
    CHECK(directionOf(60) == Vec2{0.5, root3});
    CHECK(directionOf(135) == Vec2{-root2, root2});
    CHECK(directionOf(330) == Vec2{root3, -0.5});
    CHECK(directionOf(360 * 1000 + 120) == Vec2{-0.5, root3});
    CHECK_FALSE(std::signbit(directionOf(180).y)); // no −0
}

TEST_CASE("Other directions agree with the C library to rounding, and have length 1") {
    for (int i = -7200; i <= 7200; ++i) {
        const double degrees = i / 10.0;
        const double radians = degrees * std::numbers::pi / 180;
        CHECK_THAT(directionOf(degrees).x, WithinAbs(std::cos(radians), 1e-14));
        CHECK_THAT(directionOf(degrees).y, WithinAbs(std::sin(radians), 1e-14));
        CHECK_THAT(length(directionOf(degrees)), WithinAbs(1.0, 4e-16));
    }
}

TEST_CASE("A load has the same components however it is written") {
    const Load parts{JointForce{JointId{0}, 3, -4}, {}, {}};
    CHECK(forceOf(parts) == Vec2{3, -4});
    const Load angled{AngledForce{JointId{2}, 10, 150}, {}, {}};
    CHECK_THAT(forceOf(angled)->x, WithinRel(-10 * std::numbers::sqrt3 / 2, 1e-15));
    CHECK(forceOf(angled)->y == 5);
    CHECK(jointOf(angled) == JointId{2});
    CHECK_FALSE(forceOf({SelfWeight{}, {}, {}}).has_value());
    CHECK_FALSE(jointOf({ChordLoad{{JointId{0}, JointId{1}}, 1}, {}, {}}).valid());
}

TEST_CASE("Units have the factors of their definitions") {
    CHECK(toMetre(LengthUnit::ft) == 12 * 0.0254);                           // 1959 agreement
    CHECK_THAT(toNewton(ForceUnit::lbf), WithinRel(4.4482216152605, 1e-15)); // 0.45359237 × 9.80665
    CHECK(toNewton(ForceUnit::kip) == 1000 * toNewton(ForceUnit::lbf));
    // 1 psi = 1 lbf/in² = 6894.757 293 168 … Pa
    CHECK_THAT(toPascal(StressUnit::psi), WithinRel(6894.757293168361, 1e-14));
    CHECK(toPascal(StressUnit::MPa) == 1e6);
}

TEST_CASE("Every unit is found by its own symbol") {
    for (const ForceUnit unit : {ForceUnit::Plain, ForceUnit::N, ForceUnit::kN, ForceUnit::MN,
                                 ForceUnit::lbf, ForceUnit::kip}) {
        CHECK(forceUnitNamed(symbolOf(unit)) == unit);
    }
    for (const LengthUnit unit : {LengthUnit::Plain, LengthUnit::mm, LengthUnit::cm, LengthUnit::m,
                                  LengthUnit::in, LengthUnit::ft}) {
        CHECK(lengthUnitNamed(symbolOf(unit)) == unit);
    }
    for (const StressUnit unit :
         {StressUnit::Plain, StressUnit::MPa, StressUnit::GPa, StressUnit::psi, StressUnit::ksi,
          StressUnit::kPa, StressUnit::Pa}) {
        CHECK(stressUnitNamed(symbolOf(unit)) == unit);
    }
    CHECK_FALSE(forceUnitNamed("kg").has_value());
}

TEST_CASE("Conversion keeps decimals decimal") {
    CHECK(converted(1500, LengthUnit::mm, LengthUnit::m) == 1.5);
    CHECK(converted(1.1, LengthUnit::m, LengthUnit::mm) == 1100);
    CHECK(converted(0.7, ForceUnit::N, ForceUnit::kN) == 0.7 / 1000);
    CHECK(converted(30, LengthUnit::in, LengthUnit::ft) == 2.5);
    CHECK(converted(1, LengthUnit::ft, LengthUnit::in) == 12);
    CHECK_THAT(converted(1, LengthUnit::in, LengthUnit::mm), WithinRel(25.4, 1e-15));
    CHECK(converted(210, StressUnit::GPa, StressUnit::MPa) == 210000);
}

TEST_CASE("Section shapes name the dimensions that they need") {
    Section tube{"web", "", {}, {}, "chs", {{"D", 60.3}}, {}};
    REQUIRE(faultOfDimensions(tube).has_value());
    CHECK(support::english(faultOfDimensions(tube).value_or(Statement())) ==
          "a circular hollow section needs D and t: add \"t\"");
    tube.dimensions.emplace_back("t", 30.15); // twice that leaves no hollow
    CHECK(faultOfDimensions(tube).has_value());
    tube.dimensions.back().second = 3.2;
    CHECK_FALSE(faultOfDimensions(tube).has_value());
    tube.dimensions.front().second = -60.3;
    CHECK(support::english(faultOfDimensions(tube).value_or(Statement())) ==
          "its D must be greater than 0");
    CHECK(findSectionShape("rhs")->dimensions.size() == 3);
    CHECK(findSectionShape("girder") == nullptr);
}
