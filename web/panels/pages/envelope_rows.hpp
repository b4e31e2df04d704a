#pragma once
// The table of an envelope, as two pages have it.

#include "panels/frame/panels.hpp"

#include <vector>

namespace gusset {

// Rows light their members on the board, and back.
void envelopeTable(PanelContext&, const char* id, ListedTable, const std::vector<EnvelopeRow>&);

} // namespace gusset
