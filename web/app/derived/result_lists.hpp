#pragma once
// The tables of results as the notebook lists them: indices into the rows they are made from.
// Columns are those of the tables.

#include "app/derived/derived.hpp"
#include "app/state/state.hpp"
#include "app/state/table_view.hpp"

#include <vector>

namespace gusset {

[[nodiscard]] std::vector<int> orderedForces(const AppState&, const Derived&);
[[nodiscard]] std::vector<int> orderedReactions(const AppState&, const Derived&);
[[nodiscard]] std::vector<int> orderedMovements(const AppState&, const Derived&);
[[nodiscard]] std::vector<int> orderedStretches(const AppState&, const Derived&);
[[nodiscard]] std::vector<int> orderedOrdinates(const AppState&, const Derived&);
[[nodiscard]] std::vector<int> orderedExtremes(const AppState&, SortedTable,
                                               const std::vector<EnvelopeRow>&);

} // namespace gusset
