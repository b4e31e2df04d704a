#pragma once
// What stands in a field when typing begins: it reads back the same, and is written with the
// class's sign of decimals.

#include "model/truss.hpp"

#include <string>

namespace gusset {

[[nodiscard]] std::string typedNumber(const Truss&, double value);
// Several numbers, "0, -5" or "A 1200, r 25": where a comma is the sign of decimals, a semicolon
// parts them.
[[nodiscard]] std::string typedNumbers(const Truss&, std::string withPoints);

} // namespace gusset
