#include "model/quantity/quantity_input.hpp"

#include "support/english.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

#include <cmath>
#include <string>

using namespace gusset;
using Catch::Matchers::ContainsSubstring;
using Catch::Matchers::WithinRel;

namespace {

double number(const char* text) {
    const Outcome<double> read = readNumber(text);
    INFO(text << ": " << (read ? std::string() : support::english(read.issues().front().says)));
    REQUIRE(read.ok());
    return read.value();
}

double feet(const char* text) {
    const Outcome<double> read = readLength(text, LengthUnit::ft);
    INFO(text << ": " << (read ? std::string() : support::english(read.issues().front().says)));
    REQUIRE(read.ok());
    return read.value();
}

std::string fault(const Outcome<double>& read) {
    REQUIRE_FALSE(read.ok());
    return support::english(read.issues().front().says);
}

} // namespace

TEST_CASE("Numbers are read as people type them") {
    CHECK(number("12") == 12);
    CHECK(number("  -2.5 ") == -2.5);
    CHECK(number("\u22125") == -5); // the true minus sign
    CHECK(number(".5") == 0.5);
    CHECK(number("3.") == 3);
    CHECK(number("1e3") == 1000);
    CHECK(number("2,5") == 2.5); // decimal comma
    CHECK(number("0,125") == 0.125);
    CHECK(number("1,5") == 1.5); // never 15, whichever decimal sign the class writes
}

TEST_CASE("A comma that may part thousands, or two signs of decimals, are refused") {
    for (const char* text :
         {"1,234", "12,345", "1,234.5", "1.234,5", "1,234,567", "1.2.3", "1,,5", "1 234,5,6"}) {
        CAPTURE(text);
        CHECK_FALSE(readNumber(text).ok());
        CHECK_FALSE(readForce(text, ForceUnit::kN).ok());
    }
}

TEST_CASE("Expressions follow the usual order of operations") {
    CHECK(number("2*1.5") == 3);
    CHECK(number("(3+1)/2") == 2);
    CHECK(number("1+2*3") == 7);
    CHECK(number("8/4/2") == 1);
    CHECK(number("2 \u00D7 3 \u2212 1") == 5);
    CHECK(number("-(2-5)") == 3);
    CHECK(number("2*-3") == -6);
}

TEST_CASE("Fractions may be mixed") {
    CHECK(number("3/4") == 0.75);
    CHECK(number("1 3/4") == 1.75);
    CHECK(number("-1 1/2") == -1.5);
}

TEST_CASE("Roots and angles in degrees are known") {
    CHECK(number("sqrt(2)") == std::sqrt(2.0));
    CHECK(number("\u221A3/2") == std::sqrt(3.0) / 2);
    CHECK(number("5*sin(30)") == 2.5);
    CHECK(number("cos 60\u00B0") == 0.5);
    CHECK_THAT(number("tan(45)"), WithinRel(1.0, 1e-15));
    // atan 3/4 of the 3-4-5 triangle: sine 0.6
    CHECK_THAT(number("sin(atan(3/4))"), WithinRel(0.6, 1e-14));
}

TEST_CASE("A unit converts into the unit of the field, and none means the field's own") {
    CHECK(readForce("12 kip", ForceUnit::kip).value() == 12);
    CHECK(readForce("12", ForceUnit::kip).value() == 12);
    CHECK(readForce("1500 N", ForceUnit::kN).value() == 1.5);
    CHECK(readForce("2*1.5 kN", ForceUnit::N).value() == 3000);
    CHECK(readForce("1.5kN*2", ForceUnit::N).value() == 3000);
    CHECK(readForce("500 lb", ForceUnit::kip).value() == 0.5);
    // 1 lbf = 0.453 592 37 kg × 9.806 65 m/s²
    CHECK_THAT(readForce("1 lbf", ForceUnit::N).value(), WithinRel(4.4482216152605, 1e-15));
    CHECK(readStress("210 GPa", StressUnit::MPa).value() == 210000);
    CHECK(readLength("1500 mm", LengthUnit::m).value() == 1.5);
}

TEST_CASE("Feet and inches add up, in each way that they are written") {
    CHECK(feet("4 ft 6 in") == 4.5);
    CHECK(feet("4' 6\"") == 4.5);
    CHECK(feet("4'-6\"") == 4.5);
    CHECK(feet("4\u2032 6\u2033") == 4.5);
    CHECK(feet("4' 6") == 4.5);
    CHECK(feet("4' 6 3/4\"") == 4.5625); // 6.75 in / 12
    CHECK(feet("-4' 6\"") == -4.5);
    CHECK(feet("3/4 in") == 0.0625);
    CHECK(feet("10 ft - 6 in") == 9.5);
}

TEST_CASE("Angles are in degrees unless they say rad") {
    CHECK(readAngle("30\u00B0").value() == 30);
    CHECK(readAngle("-90").value() == -90);
    CHECK_THAT(readAngle("pi/2 rad").value(), WithinRel(90.0, 1e-15));
    CHECK_THAT(readAngle("atan(1)").value(), WithinRel(45.0, 1e-15));
}

TEST_CASE("A force is typed by size and angle or by its components") {
    const TypedVector angled = readForceVector("5 @ 30\u00B0", ForceUnit::kN).value();
    CHECK(angled.angled);
    CHECK(angled.first == 5);
    CHECK(angled.second == 30);

    const TypedVector parts = readForceVector("3, -4", ForceUnit::kN).value();
    CHECK_FALSE(parts.angled);
    CHECK(parts.first == 3);
    CHECK(parts.second == -4);

    CHECK(readForceVector("2,5; -1,5", ForceUnit::kN).value().first == 2.5);
    CHECK(readForceVector("2,5; -1,5", ForceUnit::kN).value().second == -1.5);
    CHECK(readForceVector("500 N, 2 kN", ForceUnit::kN).value().first == 0.5);
}

TEST_CASE("A way is typed by length and angle or by its parts, in any length unit") {
    const TypedVector angled = readLengthVector("4 ft 6 in @ 90", LengthUnit::ft).value();
    CHECK(angled.angled);
    CHECK(angled.first == 4.5);
    CHECK(angled.second == 90);
    CHECK(readLengthVector("2 m, -50 cm", LengthUnit::m).value().second == -0.5);
    CHECK_FALSE(readLengthVector("2 kN, 1", LengthUnit::m).ok());
    CHECK(isVector("3, 4"));
    CHECK(isVector("3 @ 4"));
    CHECK_FALSE(isVector("3,4")); // a decimal comma
}

TEST_CASE("What can't be read is named, with what would do") {
    CHECK_THAT(fault(readNumber("")), ContainsSubstring("empty"));
    CHECK_THAT(fault(readNumber("abc")), ContainsSubstring("abc"));
    CHECK_THAT(fault(readNumber("2*")), ContainsSubstring("a number is missing"));
    CHECK_THAT(fault(readNumber("(1+2")), ContainsSubstring("closing parenthesis"));
    CHECK_THAT(fault(readNumber("1 2")), ContainsSubstring("put a sign between"));
    CHECK_THAT(fault(readNumber("1/0")), ContainsSubstring("divides by zero"));
    CHECK_THAT(fault(readNumber("sqrt(-1)")), ContainsSubstring("no value"));
    CHECK_THAT(fault(readNumber("1e999")), ContainsSubstring("too large"));
    CHECK_THAT(fault(readNumber("5 kN")), ContainsSubstring("kN"));
    CHECK_THAT(fault(readForce("5 m", ForceUnit::kN)), ContainsSubstring("use one of N, kN"));
    CHECK_THAT(fault(readForce("5 kN", ForceUnit::Plain)), ContainsSubstring("a number alone"));
    CHECK_THAT(fault(readForce("5 kN + 3", ForceUnit::kN)), ContainsSubstring("give both a unit"));
    CHECK_THAT(fault(readForce("2 kN * 3 kN", ForceUnit::kN)), ContainsSubstring("leave one out"));
    CHECK_THAT(fault(readNumber("1,000")), ContainsSubstring("two ways"));
    CHECK_THAT(fault(readNumber("1,000,000")), ContainsSubstring("thousands"));
    CHECK_THAT(fault(readNumber("5$")), ContainsSubstring("$"));
    CHECK_FALSE(readForceVector("5", ForceUnit::kN).ok());
}

TEST_CASE("Deep or long input is refused and never crashes") {
    CHECK_FALSE(readNumber(std::string(150, '(')).ok());
    CHECK_FALSE(readNumber(std::string(150, '-')).ok());
    CHECK_FALSE(readNumber(std::string(100'000, '1')).ok());
}
