#pragma once
// The text of a field when typing begins: it reads back the same, and uses the class's decimal
// sign.

#include "model/truss/truss.hpp"

#include <string>

namespace gusset {

[[nodiscard]] std::string typedNumber(const Truss&, double value);
// Several numbers, "0, -5" or "A 1200, r 25": where a comma is the decimal sign, a semicolon
// separates them.
[[nodiscard]] std::string typedNumbers(const Truss&, std::string withPoints);

// Returned text, for the readers of numbers (model/quantity/quantity_input): they ask back where a
// comma might separate thousands, as in 1,234, but in a class that writes decimal commas it is a
// decimal.
[[nodiscard]] std::string withPoints(const Truss&, std::string typed);

} // namespace gusset
