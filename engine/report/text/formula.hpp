#pragma once
// Formulas as tokens, and their renderings: a line of text, and MathML Core.

#include "report/text/rich_text.hpp"

#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] Token numberToken(std::string text); // a leading true minus becomes part of it
[[nodiscard]] Token variableToken(std::string text, std::string subscript = {});
[[nodiscard]] Token operatorToken(std::string text);
[[nodiscard]] Token functionToken(std::string text);
[[nodiscard]] Token wordToken(std::string text);

void append(Formula&, const Formula& more);

[[nodiscard]] RichLine runsOf(const Formula&);
[[nodiscard]] std::string mathMl(const Formula&);  // one <math display="block">, everything escaped
[[nodiscard]] std::string htmlOf(const RichLine&); // <var>, <sub>, <strong>, everything escaped

} // namespace gusset
