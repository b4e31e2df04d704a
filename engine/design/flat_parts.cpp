#include "design/flat_parts.hpp"

#include "model/catalogue/section_shapes.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

double sizeOf(const Section& section, const char* key) {
    return dimensionOf(section, key).value_or(0);
}

// Where a hollow section states no corners: they take up 1.5 t at each side (EN 10210-2).
std::vector<FlatPart> wallsOf(const Section& section, double breadth, double height) {
    const double wall = sizeOf(section, "t");
    const double corner = dimensionOf(section, "R").value_or(1.5 * wall);
    const double widest = std::max(breadth, height);
    return {{PartKind::Internal, (widest - 2 * corner) / wall, 0}};
}

std::vector<FlatPart> flangedParts(const Section& section, double outstand) {
    const double flange = sizeOf(section, "t");
    const double root = sizeOf(section, "R");
    const double web = sizeOf(section, "H") - 2 * flange - 2 * root;
    return {{PartKind::Outstand, (outstand - root) / flange, 0},
            {PartKind::Web, web / sizeOf(section, "s"), 0}};
}

} // namespace

std::vector<FlatPart> flatPartsOf(const Section& section) {
    const double breadth = sizeOf(section, "B");
    const double height = sizeOf(section, "H");
    const double wall = sizeOf(section, "t");
    if (section.shape == "chs") {
        return {{PartKind::Tube, sizeOf(section, "D") / wall, 0}};
    }
    if (section.shape == "shs") {
        return wallsOf(section, breadth, breadth);
    }
    if (section.shape == "rhs") {
        return wallsOf(section, breadth, height);
    }
    if (section.shape == "angle" || section.shape == "double-angle") {
        return {{PartKind::Leg, std::max(breadth, height) / wall, (breadth + height) / (2 * wall)}};
    }
    if (section.shape == "i") {
        return flangedParts(section, (breadth - sizeOf(section, "s")) / 2);
    }
    if (section.shape == "channel") {
        return flangedParts(section, breadth - sizeOf(section, "s"));
    }
    return {};
}

namespace {

// c/t up to which a part is of class 1, 2 and 3 in compression, over ε (tubes: ε²).
struct ClassLimits {
    double one;
    double two;
    double three;
};
ClassLimits limitsOf(PartKind kind) {
    switch (kind) {
    case PartKind::Internal:
    case PartKind::Web:
        return {33, 38, 42};
    case PartKind::Outstand:
        return {9, 10, 14};
    case PartKind::Leg: // only class 3 has a limit of its own
        return {0, 0, 15};
    case PartKind::Tube:
        break;
    }
    return {50, 70, 90};
}

} // namespace

LocalBuckling classByEn1993(const std::vector<FlatPart>& parts, double yield) {
    constexpr double kReference = 235e6; // Pa
    constexpr double kBothLegs = 11.5;
    const double square = kReference / yield;
    LocalBuckling worst;
    for (const FlatPart& part : parts) {
        const double epsilon = part.kind == PartKind::Tube ? square : std::sqrt(square);
        const ClassLimits limits = limitsOf(part.kind);
        LocalBuckling found{4, part.kind, part.ratio, limits.three * epsilon};
        const bool bothLegs = part.kind != PartKind::Leg || part.together <= kBothLegs * epsilon;
        if (part.ratio <= limits.one * epsilon) {
            found.number = 1;
        } else if (part.ratio <= limits.two * epsilon) {
            found.number = 2;
        } else if (part.ratio <= limits.three * epsilon && bothLegs) {
            found.number = 3;
        } else if (part.ratio <= limits.three * epsilon) { // by the sum of the legs
            found.ratio = part.together;
            found.limit = kBothLegs * epsilon;
        }
        if (found.number > worst.number) {
            worst = found;
        }
    }
    return worst;
}

LocalBuckling slenderByAisc360(const std::vector<FlatPart>& parts, double yield, double modulus) {
    const double root = std::sqrt(modulus / yield);
    LocalBuckling worst;
    for (const FlatPart& part : parts) {
        double limit = 0;
        switch (part.kind) {
        case PartKind::Internal:
            limit = 1.40 * root;
            break;
        case PartKind::Web:
            limit = 1.49 * root;
            break;
        case PartKind::Outstand:
            limit = 0.56 * root;
            break;
        case PartKind::Leg:
            limit = 0.45 * root;
            break;
        case PartKind::Tube:
            limit = 0.11 * root * root;
            break;
        }
        const LocalBuckling found{part.ratio > limit ? 4 : 3, part.kind, part.ratio, limit};
        if (found.number > worst.number) {
            worst = found;
        }
    }
    return worst;
}

} // namespace gusset
