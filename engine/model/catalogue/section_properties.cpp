// Second moments of area of plane figures: any handbook, e.g. W. C. Young, R. G. Budynas, Roark's
// Formulas for Stress and Strain, 7th ed., 2002, appendix A.
#include "model/catalogue/section_properties.hpp"

#include "model/catalogue/section_shapes.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gusset {

namespace {

struct AreaMoments {
    double area = 0;
    double least = 0; // second moment of area about the weak axis through the centroid
};

// No formula here subtracts two nearly equal numbers, so that even a very thin wall has an area and
// a radius.

AreaMoments ring(double outer, double wall) {
    const double inner = outer - 2 * wall;
    const double between = 4 * wall * (outer - wall); // the squared diameters differ by this
    return {std::numbers::pi * between / 4,
            std::numbers::pi * between * (outer * outer + inner * inner) / 64};
}

// About the axis along `breadth`, for a rectangle with a rectangular hole in the middle: the walls
// above and below, then those beside the hole.
double hollowMoment(double breadth, double height, double wall) {
    const double inner = height - 2 * wall;
    const double flanges =
        breadth * 2 * wall * (height * height + height * inner + inner * inner) / 12;
    return flanges + 2 * wall * inner * inner * inner / 12;
}

AreaMoments hollow(double breadth, double height, double wall) {
    return {2 * wall * (breadth + height - 2 * wall),
            std::min(hollowMoment(breadth, height, wall), hollowMoment(height, breadth, wall))};
}

AreaMoments rectangle(double one, double other) {
    const double thin = std::min(one, other);
    return {one * other, std::max(one, other) * thin * thin * thin / 12};
}

// Two rectangles: the leg `height`, and the part of the leg `breadth` beside it.
AreaMoments angle(double height, double breadth, double thickness) {
    const double beside = breadth - thickness;
    const double area1 = height * thickness;
    const double area2 = beside * thickness;
    const double dx = breadth / 2; // between the centroids of the two
    const double dy = (thickness - height) / 2;
    const double reduced = area1 * area2 / (area1 + area2);
    const double ownX =
        (thickness * height * height * height + beside * thickness * thickness * thickness) / 12;
    const double ownY =
        (height * thickness * thickness * thickness + thickness * beside * beside * beside) / 12;
    const double awayX = reduced * dy * dy;
    const double awayY = reduced * dx * dx;
    const double xy = reduced * dx * dy;
    const double half = (ownX + awayX - ownY - awayY) / 2;
    const double largest = (ownX + awayX + ownY + awayY) / 2 + std::sqrt(half * half + xy * xy);
    // The product of the two principal moments is that of any two axes less xy²: awayX·awayY.
    return {area1 + area2, (ownX * ownY + ownX * awayY + awayX * ownY) / largest};
}

// A power of two near the largest dimension: in such units no fourth power overflows a double.
double unitOf(const Section& section) {
    double largest = 0;
    for (const auto& [key, size] : section.dimensions) {
        largest = std::max(largest, size);
    }
    return largest > 0 ? std::ldexp(1, std::ilogb(largest)) : 1;
}

std::optional<AreaMoments> momentsOf(const Section& section, double unit) {
    const auto dimension = [&](const char* key) {
        return dimensionOf(section, key).value_or(0) / unit;
    };
    const double breadth = dimension("B");
    const double height = dimension("H");
    const double diameter = dimension("D");
    const double wall = dimension("t");
    if (section.shape == "round") {
        return ring(diameter, diameter / 2);
    }
    if (section.shape == "chs") {
        return ring(diameter, wall);
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
    const double unit = unitOf(section);
    const std::optional<AreaMoments> moments = momentsOf(section, unit);
    if (!moments) {
        return properties;
    }
    if (!properties.area) {
        properties.area = moments->area * unit * unit;
    }
    if (!properties.radius) {
        properties.radius = unit * std::sqrt(moments->least / moments->area);
    }
    return properties;
}

} // namespace gusset
