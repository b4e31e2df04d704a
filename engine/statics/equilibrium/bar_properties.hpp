#pragma once
// What section and material contribute to the bars of a structure.

#include "core/outcome.hpp"
#include "statics/equilibrium/structure.hpp"

namespace gusset {

// Standard gravity, 3rd CGPM, 1901.
inline constexpr double kGravity = 9.80665; // m/s²

// Area, stiffness, weight and free elongation, where the model gives them.
void addBarProperties(const Truss&, Structure&);

// What the chosen loads need and the model lacks, with its place and remedy: α for a temperature
// change, area and density for self-weight. At most kMostIssues.
[[nodiscard]] Issues missingProperties(const Truss&, const LoadChoice&);

} // namespace gusset
