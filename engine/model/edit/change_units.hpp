#pragma once
// The same truss in other units.

#include "model/truss/truss.hpp"

namespace gusset {

// Converts every number of the truss to the given units; does not set Truss::units. A quantity that
// is or becomes Plain keeps its number, as its unit is unknown.
void convertNumbers(Truss&, const Units& to);

} // namespace gusset
