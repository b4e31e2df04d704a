#pragma once
// Formulas as tokens, and how they are set as a line of text.

#include "report/text/rich_text.hpp"

#include <string>
#include <vector>

namespace gusset {

[[nodiscard]] Token numberToken(std::string text); // a leading true minus becomes part of it
[[nodiscard]] Token variableToken(std::string text, std::string subscript = {});
[[nodiscard]] Token operatorToken(std::string text);
[[nodiscard]] Token functionToken(std::string text);
[[nodiscard]] Token wordToken(std::string text);

void append(Formula&, const Formula& more);

[[nodiscard]] RichLine runsOf(const Formula&);

// Whether a term starts after this token, so that + and − there are signs rather than operators.
[[nodiscard]] bool opensTerm(const Token* before);
// Where a formula may go on in the next line: before "=", "≈", + and − outside brackets, so that a
// number stays with its sign and its "=", and behind commas.
struct BrokenFormula {
    Formula lead;              // "ΣF_y = 0:", or what stands before the first "="; may be empty
    std::vector<Formula> rest; // each kept on one line; continued lines start where the first does
};
[[nodiscard]] BrokenFormula brokenAtOperators(const Formula&);

} // namespace gusset
