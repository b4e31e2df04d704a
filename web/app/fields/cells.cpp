#include "app/fields/cells.hpp"

#include "app/fields/load_text.hpp"
#include "app/fields/typed_text.hpp"
#include "core/signs.hpp"
#include "phrases/columns.hpp"
#include "report/results/results_text.hpp"

#include <algorithm>
#include <numeric>

namespace gusset {
namespace {

bool isNew(const Truss& truss, const Cell& cell) { return cell.row >= rowsOf(truss, cell.table); }

CellValue valueOf(const Truss& truss, const Cell& cell) {
    return isNew(truss, cell) ? CellValue()
                              : columnOf(cell).write(truss, static_cast<std::size_t>(cell.row));
}

SortKey keyIn(const Truss& truss, const Cell& cell) {
    if (cell.column >= columnsOf(cell.table)) { // from storage written by a later version
        return {};
    }
    const std::optional<double> number = cellNumber(truss, cell);
    return number ? SortKey{number, ""} : SortKey{{}, cellText(truss, cell)};
}

// The columns that are searched.
std::vector<int> namedColumns(CellTable table) {
    std::vector<int> named;
    for (int column = 0; column < columnsOf(table); ++column) {
        const CellColumn& of = columnOf({table, 0, column});
        if (of.form != CellForm::Number && of.read != nullptr) {
            named.push_back(column);
        }
    }
    return named;
}

// Whether the cell is of a load that is shown by its two parts.
bool isOfParts(const Truss& truss, const Cell& cell) {
    return cell.table == CellTable::Loads && isNumber(cell) && !isNew(truss, cell) &&
           isByParts(truss.loads[static_cast<std::size_t>(cell.row)]);
}

Phrase<> nameOfPart(const Cell& cell) {
    return cell.column == column::kLoadFirst ? phrase::kPartAlongX : phrase::kPartAlongY;
}

// The unit of what the cell holds, where it is not its column's.
ColumnUnit unitOf(const Truss& truss, const Cell& cell) {
    const bool direction = cell.table == CellTable::Loads && cell.column == column::kLoadSecond;
    if (!direction) {
        return columnOf(cell).unit;
    }
    return isOfParts(truss, cell) ? ColumnUnit::Force : ColumnUnit::Degrees;
}

RichLine heardName(const Writer& writer, const Cell& cell) {
    return say(writer, isOfParts(writer.truss, cell) ? nameOfPart(cell) : columnOf(cell).name);
}

} // namespace

int rowsOf(const Truss& truss, CellTable table) { return modelTable(table).rows(truss); }

int columnsOf(CellTable table) { return static_cast<int>(modelTable(table).columns.size()); }

bool isNumber(const Cell& cell) { return columnOf(cell).form == CellForm::Number; }

bool canType(const Truss& truss, const Cell& cell) {
    const int rows = rowsOf(truss, cell.table);
    if (cell.row < 0 || cell.row > rows || cell.column >= columnsOf(cell.table)) {
        return false;
    }
    const CellColumn& column = columnOf(cell);
    if (cell.row == rows) {
        return column.more.hint.has_value();
    }
    return column.read != nullptr &&
           (column.more.canType == nullptr ||
            column.more.canType(truss, static_cast<std::size_t>(cell.row)));
}

std::optional<double> cellNumber(const Truss& truss, const Cell& cell) {
    const CellValue value = valueOf(truss, cell);
    const auto* number = std::get_if<double>(&value);
    return number ? std::optional(*number) : std::nullopt;
}

std::string cellText(const Truss& truss, const Cell& cell) {
    const CellValue value = valueOf(truss, cell);
    if (const auto* number = std::get_if<double>(&value)) {
        return typedNumber(truss, *number);
    }
    const auto& words = *std::get_if<std::string>(&value);
    return columnOf(cell).form == CellForm::Numbers ? typedNumbers(truss, words) : words;
}

std::string cellLook(const Truss& truss, const Cell& cell) {
    const LookCell look = columnOf(cell).more.look;
    std::string shown =
        look && !isNew(truss, cell) ? look(truss, static_cast<std::size_t>(cell.row)) : "";
    if (!shown.empty()) {
        return shown;
    }
    const std::optional<double> number = cellNumber(truss, cell);
    const std::string text = cellText(truss, cell);
    return number && *number < 0 ? std::string(kMinus) + text.substr(1) : text;
}

Outcome<Edit> cellEdit(const Truss& truss, const Cell& cell, const std::string& typed) {
    const CellColumn& column = columnOf(cell);
    const bool words = column.form == CellForm::Words;
    return column.read(truss, cell.row, words ? typed : withPoints(truss, typed));
}

SortedTable orderedAs(CellTable table) {
    return static_cast<SortedTable>(static_cast<int>(SortedTable::Joints) +
                                    static_cast<int>(table));
}

RowOrder asDrawn(const Truss& truss, CellTable table) {
    RowOrder order(static_cast<std::size_t>(rowsOf(truss, table)) + 1);
    std::iota(order.begin(), order.end(), 0);
    return order;
}

RowOrder shownRows(const AppState& state, CellTable table, std::optional<int> kept) {
    const Truss& truss = state.truss;
    OrderedRows rows{.count = rowsOf(truss, table), .named = namedColumns(table)};
    rows.key = [&](int row, int column) { return keyIn(truss, {table, row, column}); };
    rows.kept = kept;
    RowOrder order = listed(tableViewOf(state.notebook, orderedAs(table)), rows);
    order.push_back(rows.count);
    return order;
}

RowOrder shownRows(const AppState& state, CellTable table) {
    const auto* typed = openField<Cell>(state);
    return shownRows(state, table,
                     typed && typed->table == table ? std::optional(typed->row) : std::nullopt);
}

std::optional<Cell> cellAfter(const Truss& truss, const Cell& cell, FieldEnd how, RowOrder order) {
    Cell next = cell;
    const std::span<const int> shown = modelTable(cell.table).inNotebook;
    const auto columns = static_cast<int>(shown.size());
    const auto column =
        static_cast<int>(std::find(shown.begin(), shown.end(), cell.column) - shown.begin());
    const int step = how == FieldEnd::PreviousField ? -1 : how == FieldEnd::Below ? columns : 1;
    if (how == FieldEnd::Kept || how == FieldEnd::GivenUp) {
        return std::nullopt;
    }
    for (int row = order.back() + 1; row <= rowsOf(truss, cell.table); ++row) {
        order.push_back(row);
    }
    const auto found = std::find(order.begin(), order.end(), cell.row);
    const int end = static_cast<int>(order.size()) * columns;
    int place = found == order.end()
                    ? end
                    : static_cast<int>(found - order.begin()) * columns + column + step;
    for (; place >= 0 && place < end; place += step) {
        next.row = order[static_cast<std::size_t>(place / columns)];
        next.column = shown[static_cast<std::size_t>(place % columns)];
        if (canType(truss, next)) {
            return next;
        }
    }
    return std::nullopt;
}

std::string rowName(const Writer& writer, CellTable table, int row) {
    const ModelTable& of = modelTable(table);
    if (row == rowsOf(writer.truss, table)) {
        return sayPlain(writer, of.newRow);
    }
    const std::string first = cellText(writer.truss, {table, row, 0});
    const bool byNumber = table == CellTable::Loads || first.empty();
    return sayPlain(writer, of.row, {{"name", byNumber ? std::to_string(row + 1) : first}});
}

std::string columnName(const Writer& writer, const Cell& cell) {
    return plainText(heardName(writer, cell));
}

std::string cellName(const Writer& writer, const Cell& cell) {
    return sayPlain(
        writer, phrase::kCellOfRow,
        {{"cell", heardName(writer, cell)}, {"row", rowName(writer, cell.table, cell.row)}});
}

std::string cellNameWithUnit(const Writer& writer, const Cell& cell) {
    const std::string unit = symbolOf(writer.truss.units, unitOf(writer.truss, cell));
    return unit.empty() ? cellName(writer, cell)
                        : sayPlain(writer, phrase::kCellInUnitOfRow,
                                   {{"cell", heardName(writer, cell)},
                                    {"unit", unit},
                                    {"row", rowName(writer, cell.table, cell.row)}});
}

std::optional<Phrase<>> pickedName(const Truss& truss, const Cell& cell) {
    if (isOfParts(truss, cell)) {
        return cell.column == column::kLoadFirst ? phrase::kCellX : phrase::kCellY;
    }
    return columnOf(cell).more.picked;
}

} // namespace gusset
