#pragma once
// What section and material give to the bars of a structure.

#include "core/outcome.hpp"
#include "statics/structure.hpp"

namespace gusset {

// Standard gravity, 3rd CGPM, 1901.
inline constexpr double kGravity = 9.80665; // m/s²

// Area, stiffness, weight and free elongation, where the model tells them.
void addBarProperties(const Truss&, Structure&);

// What the model asks for and cannot be computed, with its place and cure: a temperature change
// without α, a self-weight without area or density.
[[nodiscard]] Issues missingProperties(const Truss&);

} // namespace gusset
