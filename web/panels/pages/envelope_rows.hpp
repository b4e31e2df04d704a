#pragma once
// The table of an envelope, shared by two pages.

#include "panels/frame/panels.hpp"

#include <vector>

namespace gusset {

// Rows and their members on the board highlight each other.
void envelopeTable(PanelContext&, const char* id, SortedTable, const std::vector<EnvelopeRow>&);

} // namespace gusset
