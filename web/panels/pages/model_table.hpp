#pragma once
// One of the model's tables in the notebook, with its heading and the field by which rows are
// found.

#include "app/fields/cells.hpp"
#include "panels/frame/parts.hpp"

namespace gusset {

// `below` draws what stands close under its rows.
void drawModelTable(PanelContext&, CellTable, void (*below)(PanelContext&) = nullptr);

} // namespace gusset
