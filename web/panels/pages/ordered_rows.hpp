#pragma once
// What the tables that can be sorted and searched have in common.

#include "panels/frame/panel_context.hpp"

#include <string>
#include <vector>

namespace gusset {

// The headings; pressing one sorts the rows. `name` is the table's name for screen readers.
void listHeader(PanelContext&, Table&, SortedTable, Phrase<> name);
// Above a long table, or one with hidden rows: the search field and the number of rows shown.
// `hint` says which names are searched.
void listSearch(PanelContext&, SortedTable, int rows, int shown, Phrase<> hint);

// The rows in the order of `places`: `draw(row, place)`.
template <class Row, class Draw>
void drawOrdered(const Table& table, const std::vector<Row>& rows, const std::vector<int>& places,
                 Draw draw) {
    drawRows(table, places.size(),
             [&](std::size_t i) { draw(rows[static_cast<std::size_t>(places[i])], places[i]); });
}

} // namespace gusset
