#pragma once
// The model as tables for a sheet. Private to report/sheet.

#include "design/loading/outline.hpp"
#include "report/results/table.hpp"
#include "report/text/writer.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

// Joints, members, supports, loads, sections and materials.
[[nodiscard]] std::vector<TextTable> modelTables(const Writer&);
// Combinations and moving loads.
[[nodiscard]] std::vector<TextTable> combinationTables(const Writer&);
// The same with the cases and the loads of the outline; empty for a model with none of them.
[[nodiscard]] std::string combinationsHtml(const Writer&, const std::optional<Outline>&);
[[nodiscard]] std::string sheetLength(const Truss&, double length); // length units: "2.5 m"

} // namespace gusset
