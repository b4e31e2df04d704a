#pragma once
// The class's notation for slopes: letters, ratios and degrees of inclined members.

#include "report/formula/notation.hpp"

namespace gusset {

[[nodiscard]] std::string axisName(const Notation&, bool horizontal); // x and y, or H and V
// Between two equations on one line: a comma, unless that is the decimal sign.
[[nodiscard]] Token separatorToken(const Notation&);
[[nodiscard]] Token ratioValue(const Notation&, double value);     // 0.6, to four decimals
[[nodiscard]] Token degreesToken(const Notation&, double degrees); // 36.87°
// The first side of a right triangle over its hypotenuse: 3/5, 2/√13, in the smallest whole numbers
// if there are any.
[[nodiscard]] Token sideOverLength(const Notation&, double side, double other);

} // namespace gusset
