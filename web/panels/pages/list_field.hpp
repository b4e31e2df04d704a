#pragma once
// Fields of combinations and moving loads (app/fields/load_cells).

#include "app/fields/load_cells.hpp"
#include "panels/frame/parts.hpp"

namespace gusset {

// In a box of the screen; nothing where nothing can be typed. `hint` stands in an empty one.
void listField(PanelContext&, const Table::Box&, const ListField&, const char* hint);

} // namespace gusset
