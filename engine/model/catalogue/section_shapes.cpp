#include "model/catalogue/section_shapes.hpp"

#include "model/truss/limits.hpp"
#include "phrases/faults/faults.hpp"
#include "phrases/results/lists.hpp"

#include <algorithm>
#include <array>

namespace gusset {

namespace {

using Keys = std::string_view;
constexpr std::array<Keys, 1> kRound{"D"};
constexpr std::array<Keys, 2> kTube{"D", "t"};
constexpr std::array<Keys, 2> kSquare{"B", "t"};
constexpr std::array<Keys, 3> kRectangular{"H", "B", "t"};
constexpr std::array<Keys, 2> kFlat{"B", "t"};
constexpr std::array<Keys, 2> kTimber{"B", "H"};

constexpr std::array<SectionShape, 7> kShapes{{
    {"round", phrase::kShapeRound, kRound},
    {"chs", phrase::kShapeTube, kTube},
    {"shs", phrase::kShapeSquare, kSquare},
    {"rhs", phrase::kShapeRectangular, kRectangular},
    {"angle", phrase::kShapeAngle, kRectangular},
    {"flat", phrase::kShapeFlat, kFlat},
    {"timber", phrase::kShapeTimber, kTimber},
}};

Statement listed(std::span<const Keys> keys) {
    Statement list = keys.front();
    for (std::size_t i = 1; i < keys.size(); ++i) {
        list = statement(i + 1 == keys.size() ? phrase::kListTwo : phrase::kListMore,
                         {{"a", list}, {"b", keys[i]}});
    }
    return list;
}

// Hollow: there must be room between the two walls. Angle: the legs must reach beyond the corner.
std::optional<Statement> faultOfThickness(const Section& section, double thickness) {
    const double walls = section.shape == "angle" ? 1 : 2;
    if (section.shape == "flat") {
        return std::nullopt;
    }
    for (const std::string_view key : {"D", "H", "B"}) {
        const std::optional<double> outer = dimensionOf(section, key);
        if (outer && walls * thickness >= *outer) {
            return statement(phrase::kTooThick, {{"key", key}});
        }
    }
    return std::nullopt;
}

bool isWithinReach(double size) { return size >= kSmallestSize && size <= kLargestSize; }

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
    for (const std::string_view key : shape.dimensions) {
        const std::optional<double> value = dimensionOf(section, key);
        if (!value) {
            return statement(
                phrase::kDimensionMissing,
                {{"shape", shape.says}, {"dimensions", listed(shape.dimensions)}, {"key", key}});
        }
        if (!isWithinReach(*value)) {
            return statement(*value <= 0 ? phrase::kDimensionNotPositive
                                         : phrase::kDimensionBeyondReach,
                             {{"key", key}});
        }
    }
    const std::optional<double> thickness = dimensionOf(section, "t");
    return thickness ? faultOfThickness(section, *thickness) : std::nullopt;
}

} // namespace gusset
