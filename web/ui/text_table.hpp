#pragma once
// A finished table of the engine (report/results/table) on ruled paper: columns as wide as their
// contents, in a smaller face if there are too many for the notebook's width, and in blocks one
// below the other if that is not enough.

#include "report/results/table.hpp"
#include "ui/theme.hpp"

namespace gusset {

void drawTextTable(const Ui&, const TextTable&);

} // namespace gusset
