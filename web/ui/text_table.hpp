#pragma once
// A finished table of the engine (report/results/table) on ruled paper: columns as wide as what
// stands in them, in a smaller face where there are too many for the notebook's width, and in
// blocks one under the other where that is not enough.

#include "report/results/table.hpp"
#include "ui/theme.hpp"

namespace gusset {

void drawTextTable(const Ui&, const TextTable&);

} // namespace gusset
