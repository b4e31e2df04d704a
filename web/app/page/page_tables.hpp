#pragma once
// The model's tables in the page around the board, to be read and edited without the drawing: each
// cell that can be edited is a button with its text, which site/page_tables.js turns into an input
// when it is pressed. What was typed or pressed comes back as a field.

#include "report/text/writer.hpp"

#include <string>

namespace gusset {

// Joints, members, supports, loads, materials and sections. Everything a user typed is escaped.
enum class PageCells { Typed, Plain }; // Plain: for reading only
[[nodiscard]] std::string modelTablesHtml(const Writer&, PageCells = PageCells::Typed);

} // namespace gusset
