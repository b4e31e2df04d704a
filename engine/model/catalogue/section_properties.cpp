#include "model/catalogue/section_properties.hpp"

#include "model/catalogue/section_parts.hpp"
#include "model/catalogue/section_shapes.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr Vec2 kRight{1, 0};
constexpr Vec2 kUp{0, 1};

using Parts = std::vector<SectionPart>;

// The dimensions of a section in a unit near the largest of them, a power of two: so no fourth
// power overflows a double.
struct Sizes {
    const Section& section;
    double unit = 1;

    [[nodiscard]] double of(const char* key) const {
        return dimensionOf(section, key).value_or(0) / unit;
    }
};

Sizes sizesOf(const Section& section) {
    double largest = 0;
    for (const auto& [key, size] : section.dimensions) {
        largest = std::max(largest, size);
    }
    return {section, largest > 0 ? std::ldexp(1, std::ilogb(largest)) : 1};
}

SectionPart mirrored(SectionPart part) {
    part.at.x = -part.at.x;
    part.xy = -part.xy;
    return part;
}

SectionPart upsideDown(SectionPart part) {
    part.at.y = -part.at.y;
    part.xy = -part.xy;
    return part;
}

void addRounding(Parts& parts, SectionPart part) {
    for (const SectionPart& one : {part, upsideDown(part)}) {
        parts.push_back(one);
        parts.push_back(mirrored(one));
    }
}

Parts hollow(Vec2 size, double wall, const Sizes& sizes) {
    const Vec2 inner{size.x - 2 * wall, size.y - 2 * wall};
    const double high = (size.y - wall) / 2;
    const double wide = (size.x - wall) / 2;
    Parts parts{rectanglePart({0, high}, {size.x, wall}), rectanglePart({0, -high}, {size.x, wall}),
                rectanglePart({wide, 0}, {wall, inner.y}),
                rectanglePart({-wide, 0}, {wall, inner.y})};
    const double outside = sizes.of("R");
    const double inside =
        dimensionOf(sizes.section, "Ri") ? sizes.of("Ri") : std::max(outside - wall, 0.0);
    if (outside > 0) {
        addRounding(parts, taken(cornerPart(0.5 * size, -kRight, -kUp, outside)));
    }
    if (inside > 0) {
        addRounding(parts, cornerPart(0.5 * inner, -kRight, -kUp, inside));
    }
    return parts;
}

// Its outer corner at the origin; fillet R, toes R/2 (EN 10056-1).
Parts angle(const Sizes& sizes) {
    const double height = sizes.of("H");
    const double breadth = sizes.of("B");
    const double wall = sizes.of("t");
    const double root = sizes.of("R");
    Parts parts{rectanglePart({wall / 2, height / 2}, {wall, height}),
                rectanglePart({(breadth + wall) / 2, wall / 2}, {breadth - wall, wall})};
    if (root > 0) {
        parts.push_back(cornerPart({wall, wall}, kRight, kUp, root));
        parts.push_back(taken(cornerPart({wall, height}, -kRight, -kUp, root / 2)));
        parts.push_back(taken(cornerPart({breadth, wall}, -kRight, -kUp, root / 2)));
    }
    return parts;
}

Parts doubleAngle(const Sizes& sizes) {
    Parts parts;
    for (SectionPart part : angle(sizes)) {
        part.at.x += sizes.of("gap") / 2;
        parts.push_back(part);
        parts.push_back(mirrored(part));
    }
    return parts;
}

// The upper flange to the right of x = `face`, and its fillet: of thickness t half way out from the
// middle of the section, `tip` at the tip where it tapers; the toe is then rounded by R/2
// (DIN 1026-1).
struct Flange {
    double face = 0;   // x where it leaves the web
    double reach = 0;  // x of its tip
    double middle = 0; // x where its thickness is t
};
Parts halfFlange(const Sizes& sizes, const Flange& flange) {
    const double top = sizes.of("H") / 2;
    const double thickness = sizes.of("t");
    const double tip = dimensionOf(sizes.section, "tip") ? sizes.of("tip") : thickness;
    const double slope = (thickness - tip) / (flange.reach - flange.middle);
    const double root = tip + slope * (flange.reach - flange.face);
    const Vec2 below{flange.face, top - root};
    const Vec2 toe{flange.reach, top - tip};
    Parts parts{polygonPart({below, toe, {flange.reach, top}, {flange.face, top}})};
    if (const double radius = sizes.of("R"); radius > 0) {
        const Vec2 out = (1 / std::sqrt(1 + slope * slope)) * Vec2{1, slope};
        parts.push_back(cornerPart(below, out, -kUp, radius));
        if (slope > 0) {
            parts.push_back(taken(cornerPart(toe, -out, kUp, radius / 2)));
        }
    }
    return parts;
}

Parts beam(const Sizes& sizes) {
    const double web = sizes.of("s");
    const double reach = sizes.of("B") / 2;
    Parts parts{rectanglePart({}, {web, sizes.of("H")})};
    for (const SectionPart& part : halfFlange(sizes, {web / 2, reach, reach / 2})) {
        addRounding(parts, part);
    }
    return parts;
}

// The back of its web at x = 0.
Parts channel(const Sizes& sizes) {
    const double web = sizes.of("s");
    const double reach = sizes.of("B");
    Parts parts{rectanglePart({web / 2, 0}, {web, sizes.of("H")})};
    for (const SectionPart& part : halfFlange(sizes, {web, reach, reach / 2})) {
        parts.push_back(part);
        parts.push_back(upsideDown(part));
    }
    return parts;
}

Parts partsOf(const Sizes& sizes) {
    const std::string& shape = sizes.section.shape;
    const double breadth = sizes.of("B");
    const double height = sizes.of("H");
    const double wall = sizes.of("t");
    if (shape == "round") {
        return {ringPart(sizes.of("D"), sizes.of("D") / 2)};
    }
    if (shape == "chs") {
        return {ringPart(sizes.of("D"), wall)};
    }
    if (shape == "shs") {
        return hollow({breadth, breadth}, wall, sizes);
    }
    if (shape == "rhs") {
        return hollow({breadth, height}, wall, sizes);
    }
    if (shape == "flat") {
        return {rectanglePart({}, {breadth, wall})};
    }
    if (shape == "timber") {
        return {rectanglePart({}, {breadth, height})};
    }
    if (shape == "angle") {
        return angle(sizes);
    }
    if (shape == "double-angle") {
        return doubleAngle(sizes);
    }
    if (shape == "i") {
        return beam(sizes);
    }
    return shape == "channel" ? channel(sizes) : Parts{};
}

struct Principal {
    double largest = 0;
    double least = 0;
    double lean = 0;
};

Principal principalOf(const SectionPart& sum) {
    const double half = (sum.xx - sum.yy) / 2;
    const double away = std::sqrt(half * half + sum.xy * sum.xy);
    const double largest = (sum.xx + sum.yy) / 2 + away;
    // The product of the two is xx·yy − xy²: no difference of nearly equal numbers even for a very
    // thin leg.
    const double least = (sum.xx * sum.yy - sum.xy * sum.xy) / largest;
    // Of the two equations of a principal axis the one that adds two numbers of one sign.
    const double lean = sum.xy == 0 ? 0
                        : half > 0  ? -(half + away) / sum.xy
                                    : sum.xy / (half - away);
    return {largest, least, lean};
}

SectionFigure figureOf(const SectionPart& sum, double unit) {
    const Principal principal = principalOf(sum);
    const auto radius = [&](double moment) { return unit * std::sqrt(moment / sum.area); };
    SectionFigure figure;
    figure.area = sum.area * unit * unit;
    figure.centroid = unit * sum.at;
    figure.yy = radius(sum.yy);
    figure.zz = radius(sum.xx);
    figure.strong = radius(principal.largest);
    figure.weak = radius(principal.least);
    figure.lean = principal.lean;
    return figure;
}

} // namespace

std::optional<SectionFigure> figureOf(const Section& section) {
    const Sizes sizes = sizesOf(section);
    const Parts parts = partsOf(sizes);
    if (parts.empty()) {
        return std::nullopt;
    }
    SectionFigure figure = figureOf(sumOf(parts), sizes.unit);
    if (section.shape == "double-angle") {
        figure.single = figureOf(sumOf(angle(sizes)), sizes.unit).weak;
    }
    return figure;
}

SectionProperties propertiesOf(const Section& section) {
    SectionProperties properties{section.area, section.radius};
    if (const std::optional<SectionFigure> figure = figureOf(section)) {
        properties.area = section.area.value_or(figure->area);
        properties.radius = section.radius.value_or(figure->weak);
    }
    return properties;
}

} // namespace gusset
