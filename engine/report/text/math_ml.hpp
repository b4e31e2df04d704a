#pragma once
// Lines of a working as HTML: formulas as MathML Core, sentences with their symbols.

#include "report/text/rich_text.hpp"

#include <string>

namespace gusset {

// One <math>; or, where there is a place to break, one for what the continued lines stand clear of
// and a <span> of one <math> for each part that is kept on one line. Everything is escaped.
[[nodiscard]] std::string mathMl(const Formula&);
[[nodiscard]] std::string htmlOf(const RichLine&); // <var>, <sub>, <strong>, everything escaped

} // namespace gusset
