#pragma once
// The tables of results as the notebook lists them: indices into the rows they are made from.
// Columns are those of the tables.

#include "app/derived/derived.hpp"
#include "app/state/listing.hpp"
#include "app/state/state.hpp"

#include <vector>

namespace gusset {

[[nodiscard]] std::vector<int> listedForces(const AppState&, const Derived&);
[[nodiscard]] std::vector<int> listedReactions(const AppState&, const Derived&);
[[nodiscard]] std::vector<int> listedMovements(const AppState&, const Derived&);
[[nodiscard]] std::vector<int> listedStretches(const AppState&, const Derived&);
[[nodiscard]] std::vector<int> listedOrdinates(const AppState&, const Derived&);
[[nodiscard]] std::vector<int> listedExtremes(const AppState&, ListedTable,
                                              const std::vector<EnvelopeRow>&);

} // namespace gusset
