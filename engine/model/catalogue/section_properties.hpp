#pragma once
// Area and radius of gyration of a section, as given or from its dimensions. Corners are taken as
// sharp. Makers' tables count them as they are rolled: of hot finished hollow sections (EN 10210)
// they have up to 3 % less area and 2 % less radius, of angles (EN 10056) up to 1.5 % more area and
// 2 % less radius. Who needs these gives the table's A and r, which stand before the dimensions.

#include "model/truss/truss.hpp"

#include <optional>

namespace gusset {

struct SectionProperties {
    std::optional<double> area;   // section units²
    std::optional<double> radius; // section units, about the weak axis
};

// What the section gives by itself (A, r) stands before what follows from its shape. Precondition:
// the shape, if there is one, has valid dimensions.
[[nodiscard]] SectionProperties propertiesOf(const Section&);

} // namespace gusset
