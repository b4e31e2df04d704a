#pragma once
// Trusses whose members can be checked.

#include "model/truss/truss.hpp"

#include <cstdint>

namespace gusset::support {

// gable() with bars of 1000 mm² and r = 25 mm, steel of 210 GPa and 235 MPa: the tie AB carries 16
// kN over 8 m (λ = 320), the rafters AC and CB 20 kN over 5 m (λ = 200).
[[nodiscard]] Truss steelGable();

// A truss whose sections all have their materials, with strengths, radii and random check settings
// added.
[[nodiscard]] Truss withChecks(Truss, std::uint64_t seed);

} // namespace gusset::support
