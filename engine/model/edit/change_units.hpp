#pragma once
// The same truss in other units.

#include "model/truss/truss.hpp"

namespace gusset {

// Turns every number of the truss into the given units; does not set Truss::units. A quantity that
// is or becomes Plain keeps its number: no unit says what it was.
void convertNumbers(Truss&, const Units& to);

} // namespace gusset
