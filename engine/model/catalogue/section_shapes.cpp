#include "model/catalogue/section_shapes.hpp"

#include "model/truss/limits.hpp"
#include "phrases/faults/faults.hpp"
#include "phrases/results/lists.hpp"

#include <algorithm>
#include <array>

namespace gusset {

namespace {

using Key = std::string_view;
constexpr std::array<Key, 1> kRound{"D"};
constexpr std::array<Key, 2> kTube{"D", "t"};
constexpr std::array<Key, 2> kSquare{"B", "t"};
constexpr std::array<Key, 3> kRectangular{"H", "B", "t"};
constexpr std::array<Key, 2> kFlat{"B", "t"};
constexpr std::array<Key, 2> kTimber{"B", "H"};
constexpr std::array<Key, 4> kPair{"H", "B", "t", "gap"};
constexpr std::array<Key, 4> kFlanged{"H", "B", "s", "t"};
constexpr std::array<Key, 2> kCorners{"R", "Ri"};
constexpr std::array<Key, 1> kRoot{"R"};
constexpr std::array<Key, 2> kRootAndTip{"R", "tip"};

constexpr std::array<SectionShape, 10> kShapes{{
    {"round", phrase::kShapeRound, kRound, {}},
    {"chs", phrase::kShapeTube, kTube, {}},
    {"shs", phrase::kShapeSquare, kSquare, kCorners},
    {"rhs", phrase::kShapeRectangular, kRectangular, kCorners},
    {"angle", phrase::kShapeAngle, kRectangular, kRoot},
    {"double-angle", phrase::kShapePair, kPair, kRoot},
    {"channel", phrase::kShapeChannel, kFlanged, kRootAndTip},
    {"i", phrase::kShapeBeam, kFlanged, kRootAndTip},
    {"flat", phrase::kShapeFlat, kFlat, {}},
    {"timber", phrase::kShapeTimber, kTimber, {}},
}};

Statement listed(std::span<const Key> keys) {
    Statement list = keys.front();
    for (std::size_t i = 1; i < keys.size(); ++i) {
        list = statement(i + 1 == keys.size() ? phrase::kListTwo : phrase::kListMore,
                         {{"a", list}, {"b", keys[i]}});
    }
    return list;
}

bool isWithinReach(double size) { return size >= kSmallestSize && size <= kLargestSize; }

Statement faultOfReach(Key key, double value) {
    return statement(value <= 0 ? phrase::kDimensionNotPositive : phrase::kDimensionBeyondReach,
                     {{"key", key}});
}

bool isPair(const Section& section) { return section.shape == "double-angle"; }
bool isAngle(const Section& section) { return section.shape == "angle" || isPair(section); }
bool isFlanged(const Section& section) {
    return section.shape == "i" || section.shape == "channel";
}

// Hollow: there must be room between the two walls. Angle: the legs must reach beyond the corner.
// Flanged: the web must leave a flange, and the flanges a web.
std::optional<Statement> faultOfThickness(const Section& section, double thickness) {
    if (section.shape == "flat") {
        return std::nullopt;
    }
    const double walls = isAngle(section) ? 1 : 2;
    for (const Key key : {"D", "H", "B"}) {
        const std::optional<double> outer = dimensionOf(section, key);
        if (outer && walls * thickness >= *outer && !(isFlanged(section) && key == "B")) {
            return statement(phrase::kTooThick, {{"key", key}});
        }
    }
    if (isFlanged(section) && *dimensionOf(section, "s") >= *dimensionOf(section, "B")) {
        return phrase::kWebTooThick;
    }
    return std::nullopt;
}

// Precondition: it has a breadth.
double halfWidthOf(const Section& section) {
    const double breadth = *dimensionOf(section, "B");
    return std::min(breadth, dimensionOf(section, "H").value_or(breadth)) / 2;
}

// The length that a radius at a corner may take up at most: so two of them don't overlap, and the
// section keeps an area however thin it is.
double roomOfRadius(const Section& section) {
    constexpr double kMostWalls = 10; // rolled and bent sections have up to 3
    const auto size = [&](Key key) { return *dimensionOf(section, key); };
    const double wall = size("t");
    const double breadth = size("B");
    double room = halfWidthOf(section);
    if (isAngle(
            section)) { // the fillet and the toe, of half its radius, on the inner side of a leg
        room = std::min({(2 * room - wall) / 1.5, 2 * wall});
    } else if (isFlanged(section)) {
        const double web = size("s");
        const double flange = section.shape == "i" ? (breadth - web) / 2 : breadth - web;
        room = std::min({flange / 2, size("H") / 2 - 2 * wall,
                         2 * dimensionOf(section, "tip").value_or(kMostWalls * wall)});
    }
    return std::min(room, kMostWalls * wall);
}

std::optional<Statement> faultOfTip(const Section& section) {
    const std::optional<double> tip = dimensionOf(section, "tip");
    if (!tip) {
        return std::nullopt;
    }
    constexpr double kSteepest = 0.2; // of the flange's inner side; IPN and UPN have up to 0.14
    const double wall = *dimensionOf(section, "t");
    const double breadth = *dimensionOf(section, "B");
    const double across = section.shape == "i" ? breadth / 4 : breadth / 2;
    if (*tip > wall || wall - *tip > kSteepest * across) {
        return phrase::kTipOutOfReach;
    }
    return std::nullopt;
}

std::optional<Statement> faultOfRadii(const Section& section) {
    const std::optional<double> outer = dimensionOf(section, "R");
    const std::optional<double> inner = dimensionOf(section, "Ri");
    const std::optional<double> wall = dimensionOf(section, "t");
    if (outer && *outer > roomOfRadius(section)) {
        return statement(phrase::kRadiusTooLarge, {{"key", "R"}});
    }
    if (inner && (!outer || *inner > *outer || *inner > halfWidthOf(section) - *wall)) {
        return phrase::kInnerRadiusAlone;
    }
    return std::nullopt;
}

} // namespace

std::span<const SectionShape> sectionShapes() { return kShapes; }

const SectionShape* findSectionShape(std::string_view name) {
    const auto found = std::find_if(kShapes.begin(), kShapes.end(),
                                    [&](const SectionShape& shape) { return shape.name == name; });
    return found == kShapes.end() ? nullptr : &*found;
}

std::optional<double> dimensionOf(const Section& section, std::string_view key) {
    for (const auto& [name, value] : section.dimensions) {
        if (name == key) {
            return value;
        }
    }
    return std::nullopt;
}

std::optional<Phrase<>> faultOfSize(double value) {
    if (value <= 0) {
        return phrase::kMustBePositive;
    }
    if (!isWithinReach(value)) {
        return phrase::kSizeBeyondReach;
    }
    return std::nullopt;
}

std::optional<Statement> faultOfDimensions(const Section& section) {
    const SectionShape& shape = *findSectionShape(section.shape);
    for (const Key key : shape.dimensions) {
        const std::optional<double> value = dimensionOf(section, key);
        // Two angles may touch.
        const bool none = value && *value == 0 && key == "gap";
        if (!value) {
            return statement(
                phrase::kDimensionMissing,
                {{"shape", shape.says}, {"dimensions", listed(shape.dimensions)}, {"key", key}});
        }
        if (!none && !isWithinReach(*value)) {
            return faultOfReach(key, *value);
        }
    }
    for (const Key key : shape.further) {
        const std::optional<double> value = dimensionOf(section, key);
        if (value && !isWithinReach(*value)) {
            return faultOfReach(key, *value);
        }
    }
    const std::optional<double> thickness = dimensionOf(section, "t");
    if (!thickness) {
        return std::nullopt;
    }
    for (const auto& fault : {faultOfThickness(section, *thickness), faultOfTip(section)}) {
        if (fault) {
            return fault;
        }
    }
    return faultOfRadii(section);
}

} // namespace gusset
