#pragma once
// Reads the lines between two equations and their answers, and those with the letters X and Y: each
// line must hold for the answers, and must follow from the equations that its label names.

#include "support/reading/formula_value.hpp"

#include <string>
#include <vector>

namespace gusset::support {

struct SolvingText {
    std::string text{};
    Formula formula{}; // none: a new pair of equations begins here
};

[[nodiscard]] bool isLetter(const std::string& name); // X or Y
// A line of numbers, as against a result or a named sum.
[[nodiscard]] bool isSolvingLine(const Formula&);
// The values of the letters, from lines such as X = F_AB.
[[nodiscard]] Names lettersOf(const std::vector<SolvingText>&, const Names& answers);
// The first line that a reader would object to, with what is wrong with it; or empty. A line that
// says "=" must hold for the true values of the answers; there are none if answers are rounded.
struct AnswerValues {
    Names printed{};
    Names exact{};
};
[[nodiscard]] std::string objectionToSolving(const std::vector<SolvingText>&, const AnswerValues&,
                                             const NumberReader&);

} // namespace gusset::support
