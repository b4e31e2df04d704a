#pragma once
// The section shapes that a model may name, with the dimensions that each needs. Keys are those of
// the file: H height, B breadth, D outer diameter, t wall or leg thickness, all in section units.
//
//   round    D        solid round bar          flat     B, t     flat bar
//   chs      D, t     circular hollow          angle    H, B, t  legs H and B, outside dimensions
//   shs      B, t     square hollow            timber   B, H     sawn or planed rectangle
//   rhs      H, B, t  rectangular hollow

#include "core/statement.hpp"
#include "model/truss/truss.hpp"

#include <optional>
#include <span>
#include <string_view>

namespace gusset {

struct SectionShape {
    std::string_view name; // as in the file: "chs"
    Phrase<> says;         // "circular hollow section"
    std::span<const std::string_view> dimensions;
};

[[nodiscard]] std::span<const SectionShape> sectionShapes();
[[nodiscard]] const SectionShape* findSectionShape(std::string_view name); // null: no such shape
[[nodiscard]] std::optional<double> dimensionOf(const Section&, std::string_view key);

// What is wrong with the size of a section or a number of a material, as the end of a sentence.
[[nodiscard]] std::optional<Phrase<>> faultOfSize(double);

// Why the dimensions of a section can't make its shape, as a sentence; nothing when they can.
// Precondition: the shape is one of sectionShapes().
[[nodiscard]] std::optional<Statement> faultOfDimensions(const Section&);

} // namespace gusset
