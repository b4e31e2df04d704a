#pragma once
// A finished table of the engine (report/table) on ruled paper: columns as wide as what stands in
// them, in a smaller face where there are too many for the notebook's width.

#include "report/results/table.hpp"
#include "ui/theme.hpp"

namespace gusset {

void drawTextTable(const Ui&, const TextTable&);

} // namespace gusset
