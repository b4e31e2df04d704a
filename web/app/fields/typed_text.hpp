#pragma once
// What stands in a field when typing begins: it reads back the same, and is written with the
// class's sign of decimals.

#include "model/truss/truss.hpp"

#include <string>

namespace gusset {

[[nodiscard]] std::string typedNumber(const Truss&, double value);
// Several numbers, "0, -5" or "A 1200, r 25": where a comma is the sign of decimals, a semicolon
// parts them.
[[nodiscard]] std::string typedNumbers(const Truss&, std::string withPoints);

// A text that came back, for the readers of numbers (model/quantity/quantity_input): they ask back
// where a comma might part thousands, as in 1,234, but a class that writes commas means decimals.
[[nodiscard]] std::string withPoints(const Truss&, std::string typed);

} // namespace gusset
