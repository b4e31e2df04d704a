#pragma once
// The last step by hand from an equation to its unknown: what is left over what the unknown is
// multiplied by.

#include "report/formula/notation.hpp"

namespace gusset {

// "= 60/12", "≈ −33.79/0.6402", for the one unknown of an equation that was found from it. Empty
// where nothing is divided, where the unknown is zero, and where the class writes exact numbers
// that are not short decimals.
[[nodiscard]] Formula quotientOf(const Notation&, const Equation&, const Found&);

} // namespace gusset
