#pragma once
// Tables for spreadsheets and programs: RFC 4180, UTF-8 with a byte order mark. Without the mark,
// spreadsheets read dashes and accented letters in an old code page.

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// The start of a table: the byte order mark and the line of column names.
[[nodiscard]] std::string csvHead(std::string_view columns);
// A text cell, never a number: text that a spreadsheet would run as a formula gets a leading
// apostrophe.
[[nodiscard]] std::string csvTextCell(std::string_view);

// A table as people have it: commas, semicolons or tabs between cells, whichever the first line
// that holds something has most of; quotes as in RFC 4180, where one that is never closed is a
// letter; any ends of lines; with a byte order mark or not. A row for each line, also the blank
// ones, and at least one; cells without spaces around them, and without the apostrophe of
// csvTextCell.
using CsvRow = std::vector<std::string>;
[[nodiscard]] std::vector<CsvRow> csvRows(std::string_view table);
[[nodiscard]] bool isBlankRow(const CsvRow&);

} // namespace gusset
