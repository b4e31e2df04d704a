#pragma once
// Rows copied from a spreadsheet: cells parted by tabs, rows by line ends.

#include "app/fields/cells.hpp"

namespace gusset {

[[nodiscard]] bool looksLikeRows(const std::string& text);

// Lays the rows over the table with their top left at `from`; rows past the end make new things. A
// row of headings at the top is left out. They follow the order in which the table is shown; while
// it shows only some of its rows, more than these are refused. Fails with the first cell that can't
// be read or done, and its row.
[[nodiscard]] Outcome<Truss> pasteRows(Truss, const Cell& from, const std::string& text,
                                       const RowOrder& order);

} // namespace gusset
