#pragma once
// What the tables have that can be ordered and looked through.

#include "panels/frame/parts.hpp"

#include <string>
#include <vector>

namespace gusset {

// The headings; pressed, they order the rows. `name` is said of the table to those who hear it.
void listHeader(PanelContext&, Table&, ListedTable, const char* name);
// Above a long table, or one that leaves rows out: the field for what is looked for, and how many
// rows are shown. `hint` says what rows are named by.
void listSearch(PanelContext&, ListedTable, int rows, int shown, const char* hint);

// The rows in the order of `places`: `draw(row, place)`.
template <class Row, class Draw>
void drawListed(const Table& table, const std::vector<Row>& rows, const std::vector<int>& places,
                Draw draw) {
    drawRows(table, places.size(),
             [&](std::size_t i) { draw(rows[static_cast<std::size_t>(places[i])], places[i]); });
}

} // namespace gusset
