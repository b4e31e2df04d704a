#pragma once
// What the tables have that can be ordered and looked through.

#include "panels/frame/parts.hpp"

#include <string>

namespace gusset {

// The headings; pressed, they order the rows. `name` is said of the table to those who hear it.
void listHeader(PanelContext&, Table&, ListedTable, const char* name);
// Above a long table, or one that leaves rows out: the field for what is looked for, and how many
// rows are shown. `hint` says what rows are named by.
void listSearch(PanelContext&, ListedTable, int rows, int shown, const char* hint);

} // namespace gusset
