#pragma once
// Tables for spreadsheets and programs: RFC 4180, UTF-8 with a byte order mark. Without the mark,
// spreadsheets read dashes and accented letters in an old code page.

#include <string>
#include <string_view>

namespace gusset {

// The start of a table: the byte order mark and the line of column names.
[[nodiscard]] std::string csvHead(std::string_view columns);
// A text cell, never a number: text that a spreadsheet would run as a formula gets a leading
// apostrophe.
[[nodiscard]] std::string csvTextCell(std::string_view);

} // namespace gusset
