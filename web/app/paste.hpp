#pragma once
// Rows copied from a spreadsheet: cells parted by tabs, rows by line ends.

#include "app/cells.hpp"

namespace gusset {

[[nodiscard]] bool looksLikeRows(const std::string& text);

// Lays the rows over the table with their top left at `from`; rows past the end make new things. A
// row of headings at the top is left out. Fails with the first cell that can't be read or done, and
// its row.
[[nodiscard]] Outcome<Truss> pasteRows(Truss, const Cell& from, const std::string& text);

} // namespace gusset
