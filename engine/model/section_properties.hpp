#pragma once
// Area and radius of gyration of a section, as given or from its dimensions. Corners are taken as
// sharp: rolled and cold-formed sections, whose corners are rounded, have up to some 5 % less
// (hollow) or 2 % more (angles) area in their makers' tables.

#include "model/truss.hpp"

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
