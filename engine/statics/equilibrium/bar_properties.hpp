#pragma once
// What section and material give to the bars of a structure.

#include "core/outcome.hpp"
#include "statics/equilibrium/structure.hpp"

namespace gusset {

// Standard gravity, 3rd CGPM, 1901.
inline constexpr double kGravity = 9.80665; // m/s²

// Area, stiffness, weight and free elongation, where the model tells them.
void addBarProperties(const Truss&, Structure&);

// What the chosen loads ask for and the model does not give, with its place and cure: α for a
// temperature change, area and density for self-weight. At most kMostIssues.
[[nodiscard]] Issues missingProperties(const Truss&, const LoadChoice&);

} // namespace gusset
