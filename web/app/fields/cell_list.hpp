#pragma once
// The model's tables as the notebook lists them.

#include "app/fields/cells.hpp"
#include "app/state/listing.hpp"

namespace gusset {

// Columns that order a table besides those of its cells (Listing::column).
inline constexpr int kOrderBySupportKind = 3;
inline constexpr int kOrderByArea = 3; // of sections

[[nodiscard]] ListedTable listedAs(CellTable);
// `kept`: a row that is typed in, which stays in sight whatever is looked for.
[[nodiscard]] RowOrder shownRows(const AppState&, CellTable, int kept);
[[nodiscard]] RowOrder shownRows(const AppState&, CellTable); // with the field that is open

} // namespace gusset
