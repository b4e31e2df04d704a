// Second moments of area of plane figures: any handbook, e.g. W. C. Young, R. G. Budynas, Roark's
// Formulas for Stress and Strain, 7th ed., 2002, appendix A.
#include "model/section_properties.hpp"

#include "model/section_shapes.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gusset {

namespace {

struct AreaMoments {
    double area = 0;
    double least = 0; // second moment of area about the weak axis through the centroid
};

AreaMoments ring(double outer, double inner) {
    const double o = outer * outer;
    const double i = inner * inner;
    return {std::numbers::pi * (o - i) / 4, std::numbers::pi * (o * o - i * i) / 64};
}

// About the axis along `breadth`, of a rectangle with a rectangular hole in the middle.
double hollowMoment(double breadth, double height, double wall) {
    const double innerBreadth = breadth - 2 * wall;
    const double innerHeight = height - 2 * wall;
    return (breadth * height * height * height -
            innerBreadth * innerHeight * innerHeight * innerHeight) /
           12;
}

AreaMoments hollow(double breadth, double height, double wall) {
    return {breadth * height - (breadth - 2 * wall) * (height - 2 * wall),
            std::min(hollowMoment(breadth, height, wall), hollowMoment(height, breadth, wall))};
}

AreaMoments rectangle(double one, double other) {
    const double thin = std::min(one, other);
    return {one * other, std::max(one, other) * thin * thin * thin / 12};
}

// Two rectangles: the leg `height`, and what the leg `breadth` adds beside it.
AreaMoments angle(double height, double breadth, double thickness) {
    const double beside = breadth - thickness;
    const double area1 = height * thickness;
    const double area2 = beside * thickness;
    const double dx = breadth / 2; // between the centroids of the two
    const double dy = (thickness - height) / 2;
    const double reduced = area1 * area2 / (area1 + area2);
    const double xx =
        (thickness * height * height * height + beside * thickness * thickness * thickness) / 12 +
        reduced * dy * dy;
    const double yy =
        (height * thickness * thickness * thickness + thickness * beside * beside * beside) / 12 +
        reduced * dx * dx;
    const double xy = reduced * dx * dy;
    const double half = (xx - yy) / 2;
    return {area1 + area2, (xx + yy) / 2 - std::sqrt(half * half + xy * xy)};
}

std::optional<AreaMoments> momentsOf(const Section& section) {
    const auto dimension = [&](const char* key) { return dimensionOf(section, key).value_or(0); };
    const double breadth = dimension("B");
    const double height = dimension("H");
    const double diameter = dimension("D");
    const double wall = dimension("t");
    if (section.shape == "round") {
        return ring(diameter, 0);
    }
    if (section.shape == "chs") {
        return ring(diameter, diameter - 2 * wall);
    }
    if (section.shape == "shs") {
        return hollow(breadth, breadth, wall);
    }
    if (section.shape == "rhs") {
        return hollow(breadth, height, wall);
    }
    if (section.shape == "flat") {
        return rectangle(breadth, wall);
    }
    if (section.shape == "timber") {
        return rectangle(breadth, height);
    }
    if (section.shape == "angle") {
        return angle(height, breadth, wall);
    }
    return std::nullopt;
}

} // namespace

SectionProperties propertiesOf(const Section& section) {
    SectionProperties properties{section.area, section.radius};
    const std::optional<AreaMoments> moments = momentsOf(section);
    if (!moments) {
        return properties;
    }
    if (!properties.area) {
        properties.area = moments->area;
    }
    if (!properties.radius) {
        properties.radius = std::sqrt(moments->least / moments->area);
    }
    return properties;
}

} // namespace gusset
