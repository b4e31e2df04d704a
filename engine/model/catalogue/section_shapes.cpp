#include "model/catalogue/section_shapes.hpp"

#include "model/truss/limits.hpp"

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
    {"round", "solid round bar", kRound},
    {"chs", "circular hollow section", kTube},
    {"shs", "square hollow section", kSquare},
    {"rhs", "rectangular hollow section", kRectangular},
    {"angle", "angle", kRectangular},
    {"flat", "flat bar", kFlat},
    {"timber", "timber rectangle", kTimber},
}};

std::string listed(std::span<const Keys> keys) {
    std::string text;
    for (std::size_t i = 0; i < keys.size(); ++i) {
        text += i == 0 ? "" : i + 1 == keys.size() ? " and " : ", ";
        text += keys[i];
    }
    return text;
}

// Hollow: there must be room between the two walls. Angle: the legs must reach beyond the corner.
std::optional<std::string> faultOfThickness(const Section& section, double thickness) {
    const double walls = section.shape == "angle" ? 1 : 2;
    if (section.shape == "flat") {
        return std::nullopt;
    }
    for (const std::string_view key : {"D", "H", "B"}) {
        const std::optional<double> outer = dimensionOf(section, key);
        if (outer && walls * thickness >= *outer) {
            return "its thickness t is too large for its " + std::string(key) + ": make t smaller";
        }
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

std::optional<std::string> faultOfSize(double value) {
    if (value <= 0) {
        return "must be greater than 0";
    }
    if (!(value >= kSmallestSize && value <= kLargestSize)) {
        return "is too small or too large to compute with: keep it from 1e-30 to 1e30";
    }
    return std::nullopt;
}

std::optional<std::string> faultOfDimensions(const Section& section) {
    const SectionShape& shape = *findSectionShape(section.shape);
    for (const std::string_view key : shape.dimensions) {
        const std::optional<double> value = dimensionOf(section, key);
        if (!value) {
            return "a " + std::string(shape.says) + " needs " + listed(shape.dimensions) +
                   ": add \"" + std::string(key) + "\"";
        }
        if (const auto fault = faultOfSize(*value)) {
            return "its " + std::string(key) + " " + *fault;
        }
    }
    const std::optional<double> thickness = dimensionOf(section, "t");
    return thickness ? faultOfThickness(section, *thickness) : std::nullopt;
}

} // namespace gusset
