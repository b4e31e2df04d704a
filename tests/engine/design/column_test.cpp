// Columns against published results. Units are those of each source: they cancel.
#include "design/column.hpp"
#include "design/member_checks.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <array>
#include <cmath>
#include <string>
#include <vector>

using namespace gusset;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double kPi = 3.14159265358979323846;

double chi(BucklingCurve curve, double relative) { return bucklingReduction(curve, relative).chi; }

double aiscStress(double slenderness, double modulus, double yield) {
    return criticalStress(yield, elasticStress(modulus, slenderness)).stress;
}

constexpr std::array kCurves{BucklingCurve::A0, BucklingCurve::A, BucklingCurve::B,
                             BucklingCurve::C, BucklingCurve::D};

} // namespace

TEST_CASE("Euler's load of a steel tube 24 ft long is 64.5 kip at 14.3 ksi") {
    // R. C. Hibbeler, Mechanics of Materials, example 13.1 (6th to 8th ed.; from memory): radii 3
    // in and 2.75 in, E = 29 000 ksi.
    const double area = kPi * (9 - 2.75 * 2.75);
    const double radius = std::sqrt((9 + 2.75 * 2.75) / 4);
    const double stress = elasticStress(29e3, 288 / radius);
    CHECK_THAT(stress, WithinAbs(14.3, 0.05));
    CHECK_THAT(stress * area, WithinAbs(64.5, 0.05));
}

TEST_CASE("Euler's load of a short W8×31 is 512 kip, beyond the 329 kip at which it yields") {
    // Hibbeler, likewise, example 13.2 (from memory): I = 37.1 in⁴, A = 9.13 in², 12 ft, 36 ksi.
    const double stress = elasticStress(29e3, 144 / std::sqrt(37.1 / 9.13));
    CHECK_THAT(stress, WithinAbs(56.1, 0.06));
    CHECK_THAT(stress * 9.13, WithinAbs(512, 0.5));
    // The lower limit governs: with neither divided by a factor, the strength.
    CheckSettings settings;
    settings.strengthFactor = 1;
    settings.eulerFactor = 1;
    const MemberMake make{9.13, std::sqrt(37.1 / 9.13), 29e3, 36.0, true};
    const MemberCheck check = checkOf(settings, make, 144, -100);
    CHECK(check.governing == CheckKind::Crushing);
    CHECK_THAT(check.capacity, WithinAbs(329, 0.5));
    CHECK_THAT(check.use, WithinRel(100 / (9.13 * 36), 1e-12));
    CHECK_THAT(check.buckling, WithinAbs(512, 0.5));
}

TEST_CASE("A pinned W14×132 of 30 ft carries 893 kip by φ and 594 kip by Ω") {
    // AISC Steel Construction Manual Design Examples, E.1A with table 4-1 (from memory): A = 38.8
    // in², r_y = 3.76 in, F_y = 50 ksi.
    CheckSettings settings;
    settings.formula = ColumnFormula::Aisc360;
    const MemberMake make{38.8, 3.76, 29e3, 50.0, true};
    const MemberCheck check = checkOf(settings, make, 360, -893);
    CHECK_THAT(check.slenderness, WithinAbs(95.7, 0.06));
    CHECK_THAT(check.capacity, WithinAbs(893, 0.7));
    CHECK_THAT(check.use, WithinAbs(1, 0.001));
    settings.safety = AiscSafety::Allowable;
    CHECK_THAT(checkOf(settings, make, 360, -1).capacity, WithinAbs(594, 0.7));
}

TEST_CASE("A W14×74 of 20 ft and A36 carries 408 kip by φ = 0.85") {
    // OpenStax CNX m10711, Finding the capacity of compression members: by the older LRFD, whose
    // formula is the same and whose φ was 0.85. A = 21.8 in², r_y = 2.48 in.
    CheckSettings settings;
    settings.formula = ColumnFormula::Aisc360;
    settings.phi = 0.85;
    const MemberMake make{21.8, 2.48, 29e3, 36.0, true};
    const MemberCheck check = checkOf(settings, make, 240, -1);
    CHECK_THAT(check.slenderness, WithinAbs(96.77, 0.01));
    CHECK_THAT(check.critical.stress, WithinAbs(21.99, 0.011));
    CHECK_FALSE(check.critical.elastic);
    CHECK_THAT(check.capacity, WithinAbs(408, 0.8));
}

TEST_CASE("AISC's available critical stresses for 50 ksi are those of its table") {
    // AISC Steel Construction Manual, 14th ed., table 4-22 (from memory), φ = 0.9.
    struct Row {
        double slenderness;
        double stress;
        double within;
    };
    for (const Row& row : {Row{40, 40.0, 0.05}, Row{50, 37.5, 0.05}, Row{60, 34.6, 0.05},
                           Row{100, 21.7, 0.05}, Row{120, 15.7, 0.05}, Row{200, 5.65, 0.005}}) {
        INFO("KL/r = " << row.slenderness);
        CHECK_THAT(0.9 * aiscStress(row.slenderness, 29e3, 50), WithinAbs(row.stress, row.within));
    }
}

TEST_CASE("AISC's two formulas meet where one gives way to the other") {
    for (const double yield : {36.0, 50.0, 65.0}) {
        const double limit = kPi * 1.5 * std::sqrt(29e3 / yield); // F_y / F_e = 2.25
        const double below = aiscStress(limit * (1 - 1e-9), 29e3, yield);
        const double above = aiscStress(limit * (1 + 1e-9), 29e3, yield);
        CHECK_FALSE(criticalStress(yield, elasticStress(29e3, limit * 0.999)).elastic);
        CHECK(criticalStress(yield, elasticStress(29e3, limit * 1.001)).elastic);
        // 0.658^2.25 = 0.38997 and 0.877/2.25 = 0.38978: the standard's own rounding.
        CHECK_THAT(above / below, WithinAbs(1, 6e-4));
        CHECK(above <= below);
    }
}

TEST_CASE("AISC's power is the library's to fifteen digits") {
    for (int i = 0; i <= 225; ++i) {
        const double ratio = i / 100.0;
        const double stress = ratio == 0 ? 1 : criticalStress(1, 1 / ratio).stress;
        CHECK_THAT(stress, WithinRel(std::pow(0.658, ratio), 4e-15));
    }
}

TEST_CASE("The five curves of EN 1993-1-1 give the reduction factors of its tables") {
    // EN 1993-1-1:2005, 6.3.1.2 with table 6.1; tabulated χ as in ECCS and ESDEP tables (from
    // memory).
    struct Row {
        BucklingCurve curve;
        double relative;
        double chi;
    };
    const std::vector<Row> rows{
        {BucklingCurve::A0, 0.2, 1},     {BucklingCurve::A0, 0.5, 0.9513},
        {BucklingCurve::A0, 1, 0.7253},  {BucklingCurve::A, 0.2, 1},
        {BucklingCurve::A, 0.5, 0.9243}, {BucklingCurve::A, 1, 0.6656},
        {BucklingCurve::A, 1.5, 0.3724}, {BucklingCurve::A, 2, 0.2229},
        {BucklingCurve::B, 0.2, 1},      {BucklingCurve::B, 0.5, 0.8842},
        {BucklingCurve::B, 1, 0.5970},   {BucklingCurve::B, 1.5, 0.3422},
        {BucklingCurve::B, 2, 0.2095},   {BucklingCurve::C, 0.2, 1},
        {BucklingCurve::C, 0.5, 0.8430}, {BucklingCurve::C, 1, 0.5399},
        {BucklingCurve::C, 1.5, 0.3145}, {BucklingCurve::C, 2, 0.1962},
        {BucklingCurve::D, 0.2, 1},      {BucklingCurve::D, 0.5, 0.7793},
        {BucklingCurve::D, 1, 0.4671},   {BucklingCurve::D, 1.5, 0.2766},
        {BucklingCurve::D, 2, 0.1766},
    };
    for (const Row& row : rows) {
        INFO("curve " << static_cast<int>(row.curve) << ", relative slenderness " << row.relative);
        CHECK_THAT(chi(row.curve, row.relative), WithinAbs(row.chi, 6e-5));
    }
}

TEST_CASE("A curve begins at 1, falls, stays below Euler's and below the curve before it") {
    for (std::size_t i = 0; i < kCurves.size(); ++i) {
        CHECK(chi(kCurves[i], 0.05) == 1);
        CHECK_THAT(chi(kCurves[i], 0.2 + 1e-12), WithinAbs(1, 1e-11)); // no jump
        double before = 1;
        for (double relative = 0.25; relative < 4; relative += 0.05) {
            const double now = chi(kCurves[i], relative);
            CHECK(now < before);
            CHECK(now < 1 / (relative * relative));
            if (i > 0) {
                CHECK(now < chi(kCurves[i - 1], relative));
            }
            before = now;
        }
    }
}
