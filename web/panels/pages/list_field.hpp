#pragma once
// Fields of load combinations and moving loads (app/fields/load_cells).

#include "app/fields/load_cells.hpp"
#include "panels/frame/panel_context.hpp"

namespace gusset {

// In a box of the screen; draws nothing if the field can't be edited. An empty one shows `hint`.
void listField(PanelContext&, const Table::Box&, const ListField&, const char* hint);

} // namespace gusset
