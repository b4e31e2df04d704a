#pragma once
// Area and radius of gyration of a section, as given or from its dimensions. Corners are taken as
// sharp. Makers' tables use the rolled shape: hollow sections, hot finished (EN 10210), have up to
// 3 % less area and 2 % less radius, angles (EN 10056) up to 1.5 % more area and 2 % less radius.
// For those values, enter the table's A and r, which take precedence over the dimensions.

#include "model/truss/truss.hpp"

#include <optional>

namespace gusset {

struct SectionProperties {
    std::optional<double> area;   // section units²
    std::optional<double> radius; // section units, about the weak axis
};

// The section's own values (A, r) take precedence over those from its shape. Precondition: the
// shape, if there is one, has valid dimensions.
[[nodiscard]] SectionProperties propertiesOf(const Section&);

} // namespace gusset
