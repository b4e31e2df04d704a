#pragma once
// Reads the equations of a derivation as they are printed, number by number, and works them out
// again to the digits that are shown.

#include "report/derivation/passage.hpp"

#include <string>

namespace gusset::support {

struct FormulaReading {
    std::string objection; // the first equation that does not hold, or empty
    int equations = 0;     // those that were worked out
};
// Of an equation the parts between "=" signs that hold numbers and known names must agree, each
// within what its rounding leaves open. Names get their values from the lines of results.
[[nodiscard]] FormulaReading readFormulas(const std::vector<Passage>&);

} // namespace gusset::support
