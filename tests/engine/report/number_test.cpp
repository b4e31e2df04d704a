#include "core/number.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cmath>
#include <cstdlib>
#include <limits>
#include <random>

using namespace gusset;

namespace {

NumberStyle decimals(int digits, bool keepZeros = true) {
    return {.form = NumberForm::Decimals, .digits = digits, .keepZeros = keepZeros};
}

NumberStyle significant(int digits, bool keepZeros = true) {
    return {.form = NumberForm::Significant, .digits = digits, .keepZeros = keepZeros};
}

} // namespace

TEST_CASE("a negative number has the true minus sign") {
    CHECK(formatNumber(-24.7487, decimals(2)) == "\u221224.75");
}

TEST_CASE("what rounds to zero is written without a sign") {
    CHECK(formatNumber(-0.0, decimals(2)) == "0.00");
    CHECK(formatNumber(-0.004, decimals(2)) == "0.00");
    CHECK(formatNumber(-0.004, decimals(2, false)) == "0");
    CHECK(std::signbit(roundedTo(-0.004, decimals(2))) == false);
}

TEST_CASE("trailing zeros stay in tables and go in a line of working") {
    CHECK(formatNumber(17.5, decimals(2)) == "17.50");
    CHECK(formatNumber(17.5, decimals(2, false)) == "17.5");
    CHECK(formatNumber(100, decimals(2, false)) == "100");
}

TEST_CASE("significant figures count from the first figure that is not zero") {
    CHECK(formatNumber(123456, significant(3)) == "123000");
    CHECK(formatNumber(0.00123456, significant(3)) == "0.00123");
    CHECK(formatNumber(9.996, significant(3)) == "10.0");
    CHECK(formatNumber(2.5, significant(3)) == "2.50");
    CHECK(formatNumber(2.5, significant(3, false)) == "2.5");
    CHECK(formatNumber(0, significant(3, false)) == "0");
}

TEST_CASE("the decimal sign may be a comma") {
    NumberStyle style = decimals(2);
    style.decimalSign = ',';
    CHECK(formatNumber(-1.25, style) == "\u22121,25");
    CHECK(formatGiven(1.25, style) == "1,25");
    CHECK(roundedTo(-1.25, style) == -1.25);
}

TEST_CASE("a number too long for a line stands with a power of ten") {
    CHECK(formatNumber(1.2e21, decimals(2)) == "1.2e21");
    CHECK(formatNumber(-1e100, decimals(0)) == "\u22121e100");
    CHECK(formatNumber(2.5e-9, significant(3)) == "2.5e-9");
}

TEST_CASE("what is no number does not look like one") {
    CHECK(formatNumber(std::numeric_limits<double>::quiet_NaN(), decimals(2)) == "?");
    CHECK(formatNumber(-std::numeric_limits<double>::infinity(), decimals(2)) == "\u2212\u221E");
}

TEST_CASE("a given number is written with the decimals that it has") {
    CHECK(formatGiven(20, decimals(2)) == "20");
    CHECK(formatGiven(2.125, decimals(2)) == "2.125");
    CHECK(formatGiven(0.3 - 0.1, decimals(2)) == "0.2");
    CHECK(formatGiven(-4, decimals(2)) == "\u22124");
    CHECK(formatGiven(10.0 / 3, decimals(2)) == "3.333");
}

TEST_CASE("a length on a drawing has three decimals, and three figures if it is small") {
    CHECK(formatMeasured(10.0 / 3, '.') == "3.333");
    CHECK(formatMeasured(4, '.') == "4");
    CHECK(formatMeasured(0.05, ',') == "0,05");
    CHECK(formatMeasured(0.0006, '.') == "0.0006");
    CHECK(formatMeasured(-0.00012345, '.') == "\u22120.000123");
    CHECK(formatMeasured(1e-16, '.') == "0");
}

TEST_CASE("the shortest text of a number is short and positional where that can be read") {
    CHECK(shortestNumber(0.1) == "0.1");
    CHECK(shortestNumber(-0.0) == "0");
    CHECK(shortestNumber(100000) == "100000");
    CHECK(shortestNumber(1e21) == "1e21");
    CHECK(shortestNumber(1e-7) == "1e-7");
    CHECK(shortestNumber(0.1 + 0.2) == "0.30000000000000004");
    CHECK(significantNumber(17.500000000000004, 12) == "17.5");
    CHECK(significantNumber(-2.0 / 3, 12) == "-0.666666666667");
}

TEST_CASE("the shortest text reads back as the same number") {
    std::mt19937_64 random(20240607);
    std::uniform_real_distribution<double> mantissa(-10, 10);
    std::uniform_int_distribution<int> exponent(-300, 300);
    for (int i = 0; i < 2000; ++i) {
        const double value = mantissa(random) * std::pow(10, exponent(random));
        REQUIRE(std::strtod(shortestNumber(value).c_str(), nullptr) == value);
    }
}
