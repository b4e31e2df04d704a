#pragma once
// The model as tables for a sheet. Private to report/sheet.

#include "report/results/table.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

// Joints, members, supports, loads, sections and materials.
[[nodiscard]] std::vector<TextTable> modelTables(const Writer&);
// Combinations and moving loads.
[[nodiscard]] std::vector<TextTable> combinationTables(const Writer&);
// The same with the cases; empty for a model with none of them.
[[nodiscard]] std::string combinationsHtml(const Writer&);
[[nodiscard]] std::string sheetLength(const Truss&, double length); // length units: "2.5 m"

} // namespace gusset
