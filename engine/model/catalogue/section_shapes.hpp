#pragma once
// The section shapes that a model may name, with the dimensions that each needs and those that it
// may have. Keys are those of the file: H height, B breadth, D outer diameter, t thickness of wall,
// leg or flange, s of the web; gap between two angles; R radius at the corner; all in section
// units.
//
//   round    D        solid round bar          flat     B, t     flat bar
//   chs      D, t     circular hollow          angle    H, B, t  legs H and B, outside dimensions
//   shs      B, t     square hollow            timber   B, H     sawn or planed rectangle
//   rhs      H, B, t  rectangular hollow       channel  H, B, s, t     back of the web along H
//   double-angle  H, B, t, gap  the legs H     i        H, B, s, t     two flanges of breadth B
//                               back to back
//
// Further: R, the outer radius of a hollow section's corners, and Ri, the inner one (none: R − t);
// R of the others, of the root, none: sharp (an angle with R has toes of R/2). tip: the thickness
// of tapered flanges at their tips, where t is that halfway out (none: t everywhere); their toes
// have radii of R/2.

#include "core/statement.hpp"
#include "model/truss/truss.hpp"

#include <optional>
#include <span>
#include <string_view>

namespace gusset {

struct SectionShape {
    std::string_view name;                        // as in the file: "chs"
    Phrase<> says;                                // "circular hollow section"
    std::span<const std::string_view> dimensions; // needed
    std::span<const std::string_view> further;    // may be left out
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
