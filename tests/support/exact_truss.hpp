#pragma once
// Forces of small trusses in whole fractions, by the plainest elimination: an outside judge of what
// the engine gives where stiffnesses or lengths are extreme. Shares no code with the engine but the
// model.

#include "model/truss.hpp"

#include <optional>
#include <vector>

namespace gusset::support {

// Member forces in the model's force unit, tension positive: of a stable truss with joint forces by
// components, pins and rollers that stand along an axis. Coordinates, loads, E and A are taken as
// the fractions that their doubles are. Where the forces depend on stiffness, EA/L³ of each member
// is rounded to a double first, which no force depends on by more than a few units in its last
// place. Nothing for a mechanism.
[[nodiscard]] std::optional<std::vector<double>> exactForces(const Truss&);

} // namespace gusset::support
