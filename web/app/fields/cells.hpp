#pragma once
// The model's tables as cells that can be edited: what a cell holds, the edit that a typed text
// asks for, and where the keyboard goes next. The last row of each table is empty and makes a new
// item.

#include "app/fields/columns.hpp"
#include "app/fields/field.hpp"
#include "app/state/action.hpp"
#include "app/state/table_view.hpp"
#include "report/text/writer.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

// The rows of a table as they are shown, the new row last.
using RowOrder = std::vector<int>;
[[nodiscard]] RowOrder asDrawn(const Truss&, CellTable);
[[nodiscard]] SortedTable orderedAs(CellTable);
// `kept`: a row being edited, which stays visible whatever the search.
[[nodiscard]] RowOrder shownRows(const AppState&, CellTable, std::optional<int> kept);
[[nodiscard]] RowOrder shownRows(const AppState&, CellTable); // keeps the row of the open field

[[nodiscard]] int rowsOf(const Truss&, CellTable); // without the new row
[[nodiscard]] int columnsOf(CellTable);
[[nodiscard]] bool canType(const Truss&, const Cell&);
[[nodiscard]] bool isNumber(const Cell&);                                  // else words
[[nodiscard]] std::optional<double> cellNumber(const Truss&, const Cell&); // none if no number

// The text of the field when typing begins; its numbers read back the same.
[[nodiscard]] std::string cellText(const Truss&, const Cell&);
// The text for display: as typed, with a true minus sign.
[[nodiscard]] std::string cellLook(const Truss&, const Cell&);
// Fails with a sentence when the text can't be read. Whether the edit is valid is for apply to
// decide.
[[nodiscard]] Outcome<Edit> cellEdit(const Truss&, const Cell&, const std::string& text);
// The next cell by Tab, Shift-Tab or Enter, along the rows as they are shown; none at either end of
// the table. Rows made since the order was taken come after it.
[[nodiscard]] std::optional<Cell> cellAfter(const Truss&, const Cell&, FieldEnd, RowOrder);

// The row's name for a screen reader: "joint C", "load 2", "a new member".
[[nodiscard]] std::string rowName(const Writer&, CellTable, int row);
[[nodiscard]] std::string columnName(const Writer&, const Cell&);       // "x", "force upwards"
[[nodiscard]] std::string cellName(const Writer&, const Cell&);         // "x of joint C"
[[nodiscard]] std::string cellNameWithUnit(const Writer&, const Cell&); // "x (m) of joint C"
// The label of the field in the inspector; none: it has no field for this cell.
[[nodiscard]] std::optional<Phrase<>> pickedName(const Truss&, const Cell&);

} // namespace gusset
