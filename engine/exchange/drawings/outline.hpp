#pragma once
// Which members run around the outside of a truss. Private to exchange/drawings.

#include "model/truss/truss.hpp"

#include <optional>
#include <vector>

namespace gusset {

// For each member whether it does. Nothing where it can't be told: members cross, or the truss is
// not in one piece.
[[nodiscard]] std::optional<std::vector<bool>> outlineOf(const Truss&);

} // namespace gusset
