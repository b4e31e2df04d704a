#pragma once
// One of the model's tables in the notebook, with its heading and its search field.

#include "app/fields/cells.hpp"
#include "panels/frame/panel_context.hpp"

namespace gusset {

// `below` draws what goes close under its rows.
void drawModelTable(PanelContext&, CellTable, void (*below)(PanelContext&) = nullptr);

} // namespace gusset
