#pragma once
// Materials to start from, in the units of a model and called as the book calls them. Nominal
// values from standards; the material actually used has its own certificate.

#include "core/phrase.hpp"
#include "model/truss/truss.hpp"

namespace gusset {

// Structural steel S235 up to 16 mm thick: EN 1993-1-1:2005, 3.2.6 and table 3.1; density
// EN 1991-1-1:2002, table A.4.
[[nodiscard]] Material usualSteel(const PhraseBook&, const Units&);
// Softwood C24: EN 338:2016, table 1, mean modulus and mean density; α along the grain, common
// practice. No strength, as it depends on the kind of stress.
[[nodiscard]] Material usualTimber(const PhraseBook&, const Units&);

} // namespace gusset
