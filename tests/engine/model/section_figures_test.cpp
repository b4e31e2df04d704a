// The section code: area, radii of gyration about both axes and the principal ones, of every shape
// with its fillets, against published tables.
//
// Tables of rolled sections to EN standards print what follows from nominal dimensions, so ours
// must agree to half a unit of the last printed place. AISC's print shapes to three figures while
// they are computed from the mills' own: a depth rounded by 0.5 % changes a second moment by 1 %,
// so ours must agree to 1 % (1.5 % for angles, whose toes and fillets the manual averages).
#include "support/shaped_sections.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <cmath>
#include <string>
#include <vector>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

struct Printed { // a value of a table, and one unit of its last place
    double value;
    double place;
};

// A row of a table in cm, cm², cm⁴ for dimensions in mm; place 0: not printed.
struct Row {
    std::string name;
    std::string shape;
    Sizes dimensions;
    Printed area;
    Printed iy; // second moments
    Printed iz;
    Printed ry; // radii
    Printed rz;
    Printed weak;
};

void compare(const char* what, const Printed& printed, double ours) {
    if (printed.place > 0) {
        INFO(what);
        // Half a place, plus a little for decimal halves rounded either way.
        CHECK_THAT(ours, WithinAbs(printed.value, 0.505 * printed.place));
    }
}

void compareAll(const std::vector<Row>& rows) {
    for (const Row& row : rows) {
        INFO(row.name);
        const SectionFigure ours = figure(row.shape, row.dimensions);
        const double area = ours.area / 100;
        compare("area", row.area, area);
        compare("I about y–y", row.iy, area * ours.yy * ours.yy / 100);
        compare("I about z–z", row.iz, area * ours.zz * ours.zz / 100);
        compare("radius about y–y", row.ry, ours.yy / 10);
        compare("radius about z–z", row.rz, ours.zz / 10);
        compare("least radius", row.weak, ours.weak / 10);
    }
}

} // namespace

TEST_CASE("I and H sections of EN 10365 have the published areas, moments and radii") {
    // EN 10365:2017, from memory.
    compareAll({
        {"IPE 80",
         "i",
         beam(80, 46, 3.8, 5.2, 5),
         {7.64, .01},
         {80.1, .1},
         {8.49, .01},
         {3.24, .01},
         {1.05, .01},
         {}},
        {"IPE 200",
         "i",
         beam(200, 100, 5.6, 8.5, 12),
         {28.5, .1},
         {1943, 1},
         {142.4, .1},
         {8.26, .01},
         {2.24, .01},
         {2.24, .01}},
        {"IPE 300",
         "i",
         beam(300, 150, 7.1, 10.7, 15),
         {53.8, .1},
         {8356, 1},
         {603.8, .1},
         {12.46, .01},
         {3.35, .01},
         {}},
        {"HEA 200",
         "i",
         beam(190, 200, 6.5, 10, 18),
         {53.8, .1},
         {3692, 1},
         {1336, 1},
         {8.28, .01},
         {4.98, .01},
         {}},
        {"HEB 100",
         "i",
         beam(100, 100, 6, 10, 12),
         {26.0, .1},
         {449.5, .1},
         {167.3, .1},
         {4.16, .01},
         {2.53, .01},
         {}},
        {"HEB 300",
         "i",
         beam(300, 300, 11, 19, 27),
         {149.1, .1},
         {25170, 10},
         {8563, 1},
         {12.99, .01},
         {7.58, .01},
         {}},
    });
}

TEST_CASE(
    "Channels have the published areas, moments and radii, with parallel flanges or tapered") {
    // UPE: EN 10365:2017; UPN: DIN 1026-1:2009, the flange 8 % thinner towards its tip; from
    // memory. A toe of UPN is R/2 rounded to half a millimetre: its values are held to one place.
    const auto tapered = [](double h, double b, double s, double t, double r) {
        Sizes sizes = beam(h, b, s, t, r);
        sizes.emplace_back("tip", t - 0.08 * b / 2);
        return sizes;
    };
    compareAll({
        {"UPE 100",
         "channel",
         beam(100, 55, 4.5, 7.5, 10),
         {12.5, .1},
         {207, 1},
         {38.2, .1},
         {4.07, .01},
         {1.75, .01},
         {}},
        {"UPE 200",
         "channel",
         beam(200, 80, 6, 11, 13),
         {29.0, .1},
         {1909, 1},
         {187.3, .1},
         {8.11, .01},
         {2.54, .01},
         {}},
        {"UPN 100",
         "channel",
         tapered(100, 50, 6, 8.5, 8.5),
         {13.5, .1},
         {206, 1},
         {29.3, .2},
         {3.91, .01},
         {1.47, .01},
         {}},
        {"UPN 200",
         "channel",
         tapered(200, 75, 8.5, 11.5, 11.5),
         {32.2, .1},
         {1910, 10},
         {148, 1},
         {7.70, .02},
         {2.14, .01},
         {}},
    });
    // The centroid from the back of the web: e = 1.55 and 2.01 cm.
    CHECK_THAT(figure("channel", tapered(100, 50, 6, 8.5, 8.5)).centroid.x, WithinAbs(15.5, 0.1));
    CHECK_THAT(figure("channel", tapered(200, 75, 8.5, 11.5, 11.5)).centroid.x,
               WithinAbs(20.1, 0.1));
}

TEST_CASE(
    "Hollow sections have the published areas, moments and radii, hot finished or cold formed") {
    // EN 10210-2: corners of 1.5 t outside and 1 t inside; EN 10219-2: 2 t and 1 t up to 6 mm,
    // 2.5 t and 1.5 t up to 10 mm; from memory.
    compareAll({
        {"SHS 100×5",
         "shs",
         box(100, 100, 5, 7.5, 5),
         {18.7, .1},
         {279, 1},
         {279, 1},
         {3.86, .01},
         {3.86, .01},
         {}},
        {"SHS 150×8",
         "shs",
         box(150, 150, 8, 12, 8),
         {44.8, .1},
         {1490, 10},
         {},
         {5.77, .01},
         {},
         {}},
        {"RHS 120×80×5",
         "rhs",
         box(120, 80, 5, 7.5, 5),
         {18.7, .1},
         {365, 1},
         {193, 1},
         {4.42, .01},
         {3.21, .01},
         {3.21, .01}},
        {"RHS 200×100×8",
         "rhs",
         box(200, 100, 8, 12, 8),
         {44.8, .1},
         {2230, 10},
         {739, 1},
         {7.06, .01},
         {4.06, .01},
         {}},
        {"SHS 50×3 cold",
         "shs",
         box(50, 50, 3, 6, 3),
         {5.41, .01},
         {19.5, .1},
         {},
         {1.90, .01},
         {},
         {}},
        {"SHS 100×5 cold",
         "shs",
         box(100, 100, 5, 10, 5),
         {18.4, .1},
         {271, 1},
         {},
         {3.84, .01},
         {},
         {}},
        {"RHS 100×50×4 cold",
         "rhs",
         box(100, 50, 4, 8, 4),
         {10.9, .1},
         {134, 1},
         {44.9, .1},
         {3.50, .01},
         {2.03, .01},
         {}},
    });
}

TEST_CASE("Without an inner radius, a bent corner is as thick as the wall") {
    const SectionFigure said = figure("rhs", box(100, 50, 4, 8, 4));
    const SectionFigure left = figure("rhs", {{"H", 100}, {"B", 50}, {"t", 4}, {"R", 8}});
    CHECK(said.area == left.area);
    CHECK(said.weak == left.weak);
}

TEST_CASE(
    "Angles of EN 10056 have the published areas, moments and radii, and lean of their axes") {
    // EN 10056-1:2017, from memory; toes r1/2.
    compareAll({
        {"L 50×50×5",
         "angle",
         leg(50, 50, 5, 7),
         {4.80, .01},
         {11.0, .1},
         {11.0, .1},
         {1.51, .01},
         {1.51, .01},
         {.973, .001}},
        {"L 100×100×10",
         "angle",
         leg(100, 100, 10, 12),
         {19.2, .1},
         {177, 1},
         {177, 1},
         {3.04, .01},
         {3.04, .01},
         {1.95, .01}},
        {"L 75×50×6",
         "angle",
         leg(75, 50, 6, 7),
         {7.19, .01},
         {40.5, .1},
         {14.4, .1},
         {2.37, .01},
         {1.42, .01},
         {1.08, .01}},
        {"L 200×100×10",
         "angle",
         leg(200, 100, 10, 15),
         {29.2, .1},
         {1220, 10},
         {210, 1},
         {6.46, .01},
         {2.68, .01},
         {2.15, .01}},
    });
    CHECK_THAT(figure("angle", leg(75, 50, 6, 7)).lean, WithinAbs(0.435, 0.001));
    CHECK_THAT(figure("angle", leg(200, 100, 10, 15)).lean, WithinAbs(0.263, 0.001));
    CHECK_THAT(figure("angle", leg(100, 100, 10, 12)).lean, WithinRel(1.0, 1e-9)); // 45°
}

TEST_CASE("Shapes of AISC have the areas, moments and radii of its database") {
    // AISC Shapes Database v15.0 (ambaker1/aisc-csv, Shapes-US.csv, read): inches; R of a W is
    // k_des − t_f, t of an HSS its design wall, with corners of 2 t outside.
    struct Shape {
        const char* name;
        const char* shape;
        Sizes sizes;
        double area, ix, rx, iy, ry, tolerance;
        double rz = 0;
    };
    const auto hss = [](double h, double b, double t) {
        return Sizes{{"H", h}, {"B", b}, {"t", t}, {"R", 2 * t}};
    };
    const auto angle = [](double h, double b, double t) {
        return Sizes{{"H", h}, {"B", b}, {"t", t}};
    };
    const std::vector<Shape> shapes{
        {"W8X31", "i", beam(8.00, 8.00, 0.285, 0.435, 0.394), 9.13, 110, 3.47, 37.1, 2.02, 0.01},
        {"W8X10", "i", beam(7.89, 3.94, 0.170, 0.205, 0.300), 2.96, 30.8, 3.22, 2.09, 0.841, 0.01},
        {"W12X50", "i", beam(12.2, 8.08, 0.370, 0.640, 0.500), 14.6, 391, 5.18, 56.3, 1.96, 0.01},
        {"W14X90", "i", beam(14.0, 14.5, 0.440, 0.710, 0.600), 26.5, 999, 6.14, 362, 3.70, 0.01},
        {"HSS4X4X1/4", "rhs", hss(4, 4, 0.233), 3.37, 7.80, 1.52, 7.80, 1.52, 0.01},
        {"HSS5X3X1/4", "rhs", hss(5, 3, 0.233), 3.37, 10.7, 1.78, 4.81, 1.19, 0.01},
        {"HSS5X4X3/8", "rhs", hss(5, 4, 0.349), 5.48, 17.9, 1.81, 12.6, 1.52, 0.01},
        {"L4X3X1/2", "angle", angle(4, 3, 0.5), 3.25, 5.02, 1.24, 2.40, 0.858, 0.015, 0.633},
        {"L3X3X1/4", "angle", angle(3, 3, 0.25), 1.44, 1.23, 0.926, 1.23, 0.926, 0.015, 0.585},
    };
    for (const Shape& tabled : shapes) {
        INFO(tabled.name);
        const SectionFigure ours = figure(tabled.shape, tabled.sizes);
        CHECK_THAT(ours.area, WithinRel(tabled.area, tabled.tolerance));
        CHECK_THAT(ours.area * ours.yy * ours.yy, WithinRel(tabled.ix, tabled.tolerance));
        CHECK_THAT(ours.yy, WithinRel(tabled.rx, tabled.tolerance));
        CHECK_THAT(ours.area * ours.zz * ours.zz, WithinRel(tabled.iy, tabled.tolerance));
        CHECK_THAT(ours.zz, WithinRel(tabled.ry, tabled.tolerance));
        if (tabled.rz > 0) {
            CHECK_THAT(ours.weak, WithinRel(tabled.rz, tabled.tolerance));
        }
    }
}

TEST_CASE("A double angle bends in plane like one angle, out of plane by the parallel-axis rule") {
    Random random(3);
    for (int i = 0; i < 50; ++i) {
        const double t = random.decimal(4, 12, 2);
        const double h = random.decimal(50, 150, 1);
        const double b = random.decimal(50, 150, 1);
        const double gap = random.oneIn(4) ? 0 : random.decimal(1, 20, 2);
        const double r = random.oneIn(3) ? 0.001 : random.decimal(2, 10, 2);
        Sizes sizes = leg(h, b, t, r);
        const SectionFigure one = figure("angle", sizes);
        sizes.emplace_back("gap", gap);
        const SectionFigure two = figure("double-angle", sizes);
        CHECK_THAT(two.area, WithinRel(2 * one.area, 1e-12));
        CHECK_THAT(two.yy, WithinRel(one.yy, 1e-12));
        const double away = one.centroid.x + gap / 2;
        CHECK_THAT(two.zz, WithinRel(std::sqrt(one.zz * one.zz + away * away), 1e-12));
        CHECK_THAT(two.single, WithinRel(one.weak, 1e-12));
        CHECK(two.lean == 0);
    }
}
