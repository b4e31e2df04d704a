#pragma once
// The value of a printed formula, with the uncertainty from the rounding of its numbers: half a
// unit in the last place of each, carried through sums, products, fractions and functions of
// angles.

#include "report/text/rich_text.hpp"

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace gusset::support {

constexpr double kNoise = 1e-9; // of the arithmetic, relative to the result

struct Rounded {
    double value = 0;
    double slack = 0; // the true value is no farther than this from the printed one
};
[[nodiscard]] bool agree(Rounded, Rounded);
[[nodiscard]] Rounded times(Rounded, Rounded);

// The place of a number determines how it was rounded.
enum class NumberPlace {
    Value,    // begins a term, or is all of it: a load or a force
    Factor,   // after a dot, or before a name or brackets: a lever arm, a ratio, a factor
    Fraction, // above or below a fraction line, or under a root
    Degrees,
};
using NumberReader = std::function<std::optional<Rounded>(const std::string&, NumberPlace)>;
using Names = std::map<std::string, Rounded>; // keyed by what is printed: "F_AB", "sin α"

[[nodiscard]] bool isOperator(const Token&, const char* sign);
// "F_AB" of a variable.
[[nodiscard]] std::string printedName(const Token&);
// None if something in the formula has no value.
[[nodiscard]] std::optional<Rounded> worthOf(const Formula&, const Names&, const NumberReader&);

// The digits of a number as it is printed; none if the text is not a number.
struct Digits {
    double value = 0;
    int decimals = 0; // after the point
    int power = 0;    // of the power of ten after it
    int leading = 0;  // the power of ten of its first significant figure
    bool scientific = false;
    [[nodiscard]] double step() const;                  // one unit of the last place shown
    [[nodiscard]] double figureStep(int figures) const; // of the last of that many figures
};
[[nodiscard]] std::optional<Digits> digitsOf(std::string text);

struct PrintedPart {
    Formula formula{};
    bool isExact = true; // after "=", which claims that nothing was rounded, and not after "≈"
};
using PrintedEquation = std::vector<PrintedPart>; // the parts between "=" and "≈"
// A colon starts over, a comma starts another equation.
[[nodiscard]] std::vector<PrintedEquation> equationsOf(const Formula&);

} // namespace gusset::support
