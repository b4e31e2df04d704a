#pragma once
// Sums whose printed numbers add up: a reader who adds what stands on the paper gets what stands
// below the line.

#include "core/number.hpp"

#include <string>
#include <vector>

namespace gusset {

// The decimals with which the class would print this number: as many as its figures take, or its
// own, which are meant for forces: `fewest` figures are shown of anything else, however small.
[[nodiscard]] int decimalsOf(double value, const NumberStyle&, int fewest = 3);
// The number with so many decimals, in the class's decimal sign.
[[nodiscard]] std::string withDecimals(double value, int decimals, const NumberStyle&);

// At least `decimals`, and as many more as the parts need for the sum of the printed ones, rounded
// to `decimals`, to be the printed sum.
[[nodiscard]] int decimalsThatAddUp(const std::vector<double>& parts, double sum, int decimals);
// What the printed parts add up to.
[[nodiscard]] double sumOfPrinted(const std::vector<double>& parts, int decimals);
// Whether no part, printed so, is rounded.
[[nodiscard]] bool areWrittenInFull(const std::vector<double>& parts, int decimals);

} // namespace gusset
