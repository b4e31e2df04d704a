#pragma once
// The sections of a truss as a list to order or to weigh by. Private to report/sheet.

#include "report/results/table.hpp"
#include "report/text/writer.hpp"

namespace gusset {

// Each section that members have: how many of them, their length, and in kg what they weigh where
// area and density are known; last the sum. Without rows if no member has a section.
[[nodiscard]] TextTable profilesTable(const Writer&);
[[nodiscard]] bool hasProfiles(const Truss&);

} // namespace gusset
