#include "app/fields/cell_list.hpp"

#include "model/catalogue/section_properties.hpp"

namespace gusset {
namespace {

SortKey keyIn(const Truss& truss, const Cell& cell) {
    const auto row = static_cast<std::size_t>(cell.row);
    if (cell.table == CellTable::Supports && cell.column == kOrderBySupportKind) {
        return {{}, truss.supports[row].kind == SupportKind::Pin ? "pin" : "roller"};
    }
    if (cell.table == CellTable::Sections && cell.column == kOrderByArea) {
        return {propertiesOf(truss.sections[row]).area, ""};
    }
    if (cell.column >= columnsOf(cell.table)) { // from a store that a later version wrote
        return {};
    }
    const std::optional<double> number = cellNumber(truss, cell);
    return number ? SortKey{number, ""} : SortKey{{}, cellText(truss, cell)};
}

std::vector<int> namedColumns(CellTable table) {
    std::vector<int> named;
    for (int column = 0; column < columnsOf(table); ++column) {
        if (!isNumber({table, 0, column})) {
            named.push_back(column);
        }
    }
    return named;
}

} // namespace

ListedTable listedAs(CellTable table) {
    return static_cast<ListedTable>(static_cast<int>(ListedTable::Joints) +
                                    static_cast<int>(table));
}

RowOrder shownRows(const AppState& state, CellTable table, int kept) {
    const Truss& truss = state.truss;
    ListedRows rows{.count = rowsOf(truss, table), .named = namedColumns(table)};
    rows.key = [&](int row, int column) { return keyIn(truss, {table, row, column}); };
    rows.kept = kept;
    RowOrder order = listed(listingOf(state.notebook, listedAs(table)), rows);
    order.push_back(rows.count);
    return order;
}

RowOrder shownRows(const AppState& state, CellTable table) {
    const std::optional<Cell> typed = cellOf(state.field.key);
    return shownRows(state, table, typed && typed->table == table ? typed->row : -1);
}

} // namespace gusset
