// Second moments of area of plane figures: any handbook, e.g. W. C. Young, R. G. Budynas, Roark's
// Formulas for Stress and Strain, 7th ed., 2002, appendix A (rectangle, sector); a polygon by
// Green's theorem.
#include "model/catalogue/section_parts.hpp"

#include <cmath>
#include <numbers>

namespace gusset {

namespace {

// Half the angle of the arc, from its tangent, by a series, as the standard libraries of the
// browser and of native builds differ in the last bit: atan t = π/4 + atan d, d = (t − 1)/(t + 1),
// and |d| ≤ 0.27 for what cornerPart allows.
double halfAngle(double tangent) {
    const double d = (tangent - 1) / (tangent + 1);
    double power = d;
    double sum = 0;
    for (int n = 0; n < 14; ++n) {
        sum += (n % 2 ? -power : power) / (2 * n + 1);
        power *= d * d;
    }
    return std::numbers::pi / 4 + sum;
}

// About the centroid, from the integrals about the origin.
SectionPart centred(double area, Vec2 first, Vec2 second, double product) {
    const Vec2 at = (1 / area) * first;
    return {area, at, second.x - area * at.x * at.x, second.y - area * at.y * at.y,
            product - area * at.x * at.y};
}

} // namespace

SectionPart rectanglePart(Vec2 centre, Vec2 size) {
    const double area = size.x * size.y;
    return {area, centre, area * size.x * size.x / 12, area * size.y * size.y / 12, 0};
}

SectionPart ringPart(double outer, double wall) {
    const double inner = outer - 2 * wall;
    const double area = std::numbers::pi * wall * (outer - wall);
    const double moment = area * (outer * outer + inner * inner) / 16;
    return {area, {}, moment, moment, 0};
}

SectionPart polygonPart(const std::vector<Vec2>& corners) {
    const Vec2 origin = corners.front();
    double area = 0;
    Vec2 first;
    Vec2 second;
    double product = 0;
    for (std::size_t i = 1; i + 1 < corners.size(); ++i) { // triangles at the first corner
        const Vec2 a = corners[i] - origin;
        const Vec2 b = corners[i + 1] - origin;
        const double twice = cross(a, b);
        area += twice / 2;
        first = first + (twice / 6) * (a + b);
        second.x += twice / 12 * (a.x * a.x + a.x * b.x + b.x * b.x);
        second.y += twice / 12 * (a.y * a.y + a.y * b.y + b.y * b.y);
        product += twice / 24 * (2 * a.x * a.y + a.x * b.y + b.x * a.y + 2 * b.x * b.y);
    }
    SectionPart part = centred(area, first, second, product);
    part.at = part.at + origin;
    return part;
}

SectionPart cornerPart(Vec2 corner, Vec2 one, Vec2 other, double radius) {
    // The kite of corner, points of contact and centre, less the sector; about the centre, with m
    // towards the corner.
    const double opening = std::abs(cross(one, other)) / (1 + dot(one, other)); // tan(ω/2)
    const double reach = radius / opening; // from the corner to the points of contact
    const double away = std::sqrt(reach * reach + radius * radius); // from corner to centre
    const Vec2 inward = one + other;
    const Vec2 m = (-1 / std::sqrt(dot(inward, inward))) * inward;
    const double half = halfAngle(1 / opening);
    const double sine = reach / away;
    const double cosine = radius / away;
    const double square = radius * radius;

    const double along = radius * cosine; // of the points of contact
    const double aside = radius * sine;
    const double kite = away * aside;
    const double sector = square * half;
    const double area = kite - sector;
    const double first = kite * (along + away) / 3 - 2.0 / 3 * radius * square * sine;
    const double alongTwice = kite * (along * along + along * away + away * away) / 6 -
                              square * square / 4 * (half + sine * cosine);
    const double asideTwice =
        kite * aside * aside / 6 - square * square / 4 * (half - sine * cosine);
    const double ownAlong = alongTwice - first * first / area;
    SectionPart part{area, corner + (first / area - away) * m, 0, 0, 0};
    part.xx = ownAlong * m.x * m.x + asideTwice * m.y * m.y;
    part.yy = ownAlong * m.y * m.y + asideTwice * m.x * m.x;
    part.xy = (ownAlong - asideTwice) * m.x * m.y;
    return part;
}

SectionPart taken(SectionPart part) { return {-part.area, part.at, -part.xx, -part.yy, -part.xy}; }

SectionPart sumOf(const std::vector<SectionPart>& parts) {
    SectionPart sum;
    Vec2 first;
    for (const SectionPart& part : parts) {
        sum.area += part.area;
        first = first + part.area * part.at;
    }
    sum.at = (1 / sum.area) * first;
    for (const SectionPart& part : parts) {
        const Vec2 away = part.at - sum.at;
        sum.xx += part.xx + part.area * away.x * away.x;
        sum.yy += part.yy + part.area * away.y * away.y;
        sum.xy += part.xy + part.area * away.x * away.y;
    }
    return sum;
}

} // namespace gusset
