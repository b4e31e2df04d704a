#pragma once
// Tables for spreadsheets and programs: RFC 4180, UTF-8 with a byte order mark, without which
// spreadsheets take the dashes and letters of names for those of an old code page.

#include <string>
#include <string_view>

namespace gusset {

// What a table begins with: the mark, and the line of the columns' names.
[[nodiscard]] std::string csvHead(std::string_view columns);
// Text, never numbers: what a spreadsheet would run as a formula stands behind an apostrophe.
[[nodiscard]] std::string csvTextCell(std::string_view);

} // namespace gusset
