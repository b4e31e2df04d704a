// The section code: area, radii of gyration about both axes and the principal ones, of every shape
// with its fillets, against an integration along its outline, which shares nothing with the parts
// that the section code adds up.
#include "support/random.hpp"
#include "support/shaped_sections.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::WithinRel;

namespace {

struct OutlineCorner {
    Vec2 at;
    double radius = 0; // of the arc that rounds it, or fills it
};

constexpr int kSteps = 400; // of an arc

// The polygon around a figure, anticlockwise, its arcs as many short chords.
std::vector<Vec2> outlineOf(const std::vector<OutlineCorner>& corners) {
    std::vector<Vec2> outline;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const auto& [at, radius] = corners[i];
        if (radius == 0) {
            outline.push_back(at);
            continue;
        }
        const auto towards = [&, here = at](std::size_t other) {
            const Vec2 way = corners[other % corners.size()].at - here;
            return (1 / length(way)) * way;
        };
        const Vec2 back = towards(i + corners.size() - 1);
        const Vec2 on = towards(i + 1);
        const double half = std::acos(dot(back, on)) / 2;
        const Vec2 middle = (1 / length(back + on)) * (back + on);
        const Vec2 centre = at + (radius / std::sin(half)) * middle;
        const double reach = radius / std::tan(half);
        const Vec2 first = at + reach * back - centre;
        const double sweep = std::numbers::pi - 2 * half;
        const double sense = cross(back, on) < 0 ? 1 : -1; // anticlockwise round a full corner
        for (int k = 0; k <= kSteps; ++k) {
            const double a = sense * sweep * k / kSteps;
            outline.push_back(centre + Vec2{first.x * std::cos(a) - first.y * std::sin(a),
                                            first.x * std::sin(a) + first.y * std::cos(a)});
        }
    }
    return outline;
}

struct Integral {
    double area = 0;
    Vec2 first;
    double xx = 0;
    double yy = 0;
    double xy = 0;
};

void integrate(Integral& sum, const std::vector<Vec2>& outline, double sign) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Vec2 a = outline[i];
        const Vec2 b = outline[(i + 1) % outline.size()];
        const double turn = sign * cross(a, b);
        sum.area += turn / 2;
        sum.first = sum.first + (turn / 6) * (a + b);
        sum.xx += turn / 12 * (a.x * a.x + a.x * b.x + b.x * b.x);
        sum.yy += turn / 12 * (a.y * a.y + a.y * b.y + b.y * b.y);
        sum.xy += turn / 24 * (2 * a.x * a.y + a.x * b.y + b.x * a.y + 2 * b.x * b.y);
    }
}

// Compares with the area, both radii, the centroid and the principal axes, which are found by
// turning an axis round.
void checkAgainst(const SectionFigure& ours, const Integral& sum) {
    constexpr double kChords = 2e-6; // what chords leave of an arc
    const Vec2 centre = (1 / sum.area) * sum.first;
    const double xx = sum.xx - sum.area * centre.x * centre.x;
    const double yy = sum.yy - sum.area * centre.y * centre.y;
    const double xy = sum.xy - sum.area * centre.x * centre.y;
    const double size = std::sqrt((xx + yy) / sum.area);
    CHECK_THAT(ours.area, WithinRel(sum.area, kChords));
    CHECK_THAT(ours.yy, WithinRel(std::sqrt(yy / sum.area), kChords));
    CHECK_THAT(ours.zz, WithinRel(std::sqrt(xx / sum.area), kChords));
    CHECK(length(ours.centroid - centre) <= kChords * size);
    double largest = 0;
    double least = 1e300;
    for (int i = 0; i < 18000; ++i) {
        const double turn = i * std::numbers::pi / 18000;
        const double c = std::cos(turn);
        const double s = std::sin(turn);
        const double moment = yy * c * c + xx * s * s - 2 * xy * s * c; // about an axis at `turn`
        largest = std::max(largest, moment);
        least = std::min(least, moment);
    }
    CHECK_THAT(ours.strong, WithinRel(std::sqrt(largest / sum.area), 1e-5));
    CHECK_THAT(ours.weak, WithinRel(std::sqrt(least / sum.area), 1e-5));
    if (ours.lean != 0) { // the axis that it says is the strong one
        const double c = 1 / std::sqrt(1 + ours.lean * ours.lean);
        const double s = ours.lean * c;
        const double moment = yy * c * c + xx * s * s - 2 * xy * s * c;
        CHECK_THAT(moment, WithinRel(largest, 1e-5));
    }
}

std::vector<OutlineCorner> mirrored(std::vector<OutlineCorner> corners) {
    for (OutlineCorner& corner : corners) {
        corner.at.x = -corner.at.x;
    }
    return {corners.rbegin(), corners.rend()};
}

std::vector<OutlineCorner> legCorners(double h, double b, double t, double r, double shift) {
    return {{{shift, 0}, 0},     {{shift + b, 0}, 0},     {{shift + b, t}, r / 2},
            {{shift + t, t}, r}, {{shift + t, h}, r / 2}, {{shift, h}, 0}};
}

// The flanges taper from `root` at the web's face, x = `face`, to `tip` at x = `reach`.
std::vector<OutlineCorner> rightHalf(double h, double face, double reach, double root, double tip,
                                     double r) {
    const double toe = root > tip ? r / 2 : 0;
    return {{{reach, -h / 2}, 0},      {{reach, -h / 2 + tip}, toe}, {{face, -h / 2 + root}, r},
            {{face, h / 2 - root}, r}, {{reach, h / 2 - tip}, toe},  {{reach, h / 2}, 0}};
}

} // namespace

TEST_CASE("The section code agrees with an integration along the outline, for any dimensions") {
    Random random(17);
    for (int i = 0; i < 60; ++i) {
        INFO("round " << i);
        const double t = random.decimal(4, 12, 2);
        const double s = random.decimal(3, 10, 2);
        const double r = random.decimal(1, 9, 2);
        const double h = random.decimal(90, 400, 1);
        const double b = random.decimal(80, 300, 1);
        {
            Integral sum;
            integrate(sum, outlineOf(legCorners(h, b, t, std::min(r, 2 * t), 0)), 1);
            checkAgainst(figure("angle", leg(h, b, t, std::min(r, 2 * t))), sum);
        }
        {
            Integral sum;
            const auto corners = legCorners(h, b, t, r, 4.5);
            integrate(sum, outlineOf(corners), 1);
            integrate(sum, outlineOf(mirrored(corners)), 1);
            Sizes sizes = leg(h, b, t, r);
            sizes.emplace_back("gap", 9);
            checkAgainst(figure("double-angle", sizes), sum);
        }
        {
            Integral sum;
            const double inner = r * 0.6;
            const Vec2 far{b / 2, h / 2};
            const auto ring = [](Vec2 corner, double radius) {
                return outlineOf({{{-corner.x, -corner.y}, radius},
                                  {{corner.x, -corner.y}, radius},
                                  {corner, radius},
                                  {{-corner.x, corner.y}, radius}});
            };
            integrate(sum, ring(far, r), 1);
            integrate(sum, ring(far - Vec2{t, t}, inner), -1);
            checkAgainst(figure("rhs", box(h, b, t, r, inner)), sum);
        }
        for (const bool tapers : {false, true}) {
            // t is the thickness halfway from the middle of the I, or the back of the channel, out.
            const double slope = tapers ? random.decimal(2, 14, 1) / 100 : 0;
            const double tipOfBeam = t - slope * b / 4;
            const double tipOfChannel = t - slope * b / 2;
            const double fillet = std::min(r, 3.0);
            if (tipOfBeam > 1.6) {
                Sizes sizes = beam(h, b, s, t, fillet);
                sizes.emplace_back("tip", tipOfBeam);
                const double root = tipOfBeam + slope * (b - s) / 2;
                std::vector<OutlineCorner> corners =
                    rightHalf(h, s / 2, b / 2, root, tipOfBeam, fillet);
                for (const OutlineCorner& corner : mirrored(corners)) {
                    corners.push_back(corner);
                }
                Integral sum;
                integrate(sum, outlineOf(corners), 1);
                checkAgainst(figure("i", sizes), sum);
            }
            if (tipOfChannel > 1.6) {
                Sizes sizes = beam(h, b, s, t, fillet);
                sizes.emplace_back("tip", tipOfChannel);
                const double root = tipOfChannel + slope * (b - s);
                std::vector<OutlineCorner> corners = rightHalf(h, s, b, root, tipOfChannel, fillet);
                corners.push_back({{0, h / 2}, 0});
                corners.push_back({{0, -h / 2}, 0});
                Integral sum;
                integrate(sum, outlineOf(corners), 1);
                checkAgainst(figure("channel", sizes), sum);
            }
        }
    }
}
