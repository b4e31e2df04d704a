#pragma once
// Joints and members as tables: rows of label, x, y and rows of a, b.

#include "exchange/drawings/traced.hpp"

#include <string>
#include <string_view>

namespace gusset {

// Commas, semicolons or tabs between cells, a decimal comma where no number has a point, headings
// or none, units in headings or behind numbers. Rows that can't be used are left out, each with a
// note; fails if no joint or no member is left.
[[nodiscard]] Outcome<Traced> readTrussTable(std::string_view text, const DrawingWishes&);

// The same with headings, in full precision.
[[nodiscard]] std::string trussTable(const Truss&);

} // namespace gusset
