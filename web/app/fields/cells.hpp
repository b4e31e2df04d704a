#pragma once
// The model's tables as cells that can be typed into: what a cell holds, what edit a typed text
// asks for, and where the keyboard goes next. The last row of each table is empty and makes a new
// thing.

#include "app/fields/columns.hpp"
#include "app/fields/field.hpp"
#include "app/state/action.hpp"
#include "app/state/listing.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

// The rows of a table as they are shown, the new one last.
using RowOrder = std::vector<int>;
[[nodiscard]] RowOrder asDrawn(const Truss&, CellTable);
[[nodiscard]] ListedTable listedAs(CellTable);
// `kept`: a row that is typed in, which stays in sight whatever is looked for.
[[nodiscard]] RowOrder shownRows(const AppState&, CellTable, std::optional<int> kept);
[[nodiscard]] RowOrder shownRows(const AppState&, CellTable); // with the field that is open

[[nodiscard]] int rowsOf(const Truss&, CellTable); // without the new row
[[nodiscard]] int columnsOf(CellTable);
[[nodiscard]] bool canType(const Truss&, const Cell&);
[[nodiscard]] bool isNumber(const Cell&);                                  // words otherwise
[[nodiscard]] std::optional<double> cellNumber(const Truss&, const Cell&); // if one stands there

// What stands in the field when typing begins: numbers that read back the same.
[[nodiscard]] std::string cellText(const Truss&, const Cell&);
// The same to look at: a true minus sign, six figures.
[[nodiscard]] std::string cellLook(const Truss&, const Cell&);
// Fails with a sentence when the text can't be read. Whether the edit can be done is for apply.
[[nodiscard]] Outcome<Edit> cellEdit(const Truss&, const Cell&, const std::string& text);
// By Tab, Shift-Tab and Enter, along the rows as they are shown; nothing at the ends of a table.
// Rows made since the order was taken stand behind it.
[[nodiscard]] std::optional<Cell> cellAfter(const Truss&, const Cell&, FieldEnd, RowOrder);

// As those who hear it are told: "joint C", "load 2", "a new member".
[[nodiscard]] std::string rowName(const Truss&, CellTable, int row);
[[nodiscard]] std::string cellName(const Truss&, const Cell&);         // "x of joint C"
[[nodiscard]] std::string cellNameWithUnit(const Truss&, const Cell&); // "x (m) of joint C"
// Before the field of the inspector; empty: it has none for this cell.
[[nodiscard]] std::string_view pickedName(const Truss&, const Cell&);

} // namespace gusset
