#pragma once
// Rows copied from a spreadsheet: cells separated by tabs, rows by line ends.

#include "app/fields/cells.hpp"

namespace gusset {

[[nodiscard]] bool looksLikeRows(const std::string& text);

// Writes the rows over the table with their top left cell at `from`; rows past the end make new
// items. A heading row at the top is skipped. The rows follow the order in which the table is
// shown; while a search hides some of its rows, more rows than are shown are refused. Fails at the
// first cell that can't be read or applied, and names its row.
[[nodiscard]] Outcome<Truss> pasteRows(Truss, const Cell& from, const std::string& text,
                                       const RowOrder& order);

} // namespace gusset
