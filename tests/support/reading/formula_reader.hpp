#pragma once
// Reads the equations of a derivation as they are printed, number by number, and checks their
// arithmetic to the digits shown.

#include "report/derivation/passage.hpp"

#include <string>

namespace gusset::support {

struct FormulaReading {
    std::string objection; // the first equation that does not hold, or empty
    int equations = 0;     // those that were worked out
};
// The parts of an equation between "=" signs that hold numbers and known names must agree, each
// within its rounding. Names get their values from the lines of results.
[[nodiscard]] FormulaReading readFormulas(const std::vector<Passage>&);

} // namespace gusset::support
