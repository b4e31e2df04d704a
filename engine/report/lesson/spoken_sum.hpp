#pragma once
// A sum of forces or moments as one would say it aloud, term by term.

#include "report/formula/notation.hpp"

#include <string>

namespace gusset {

// "E y, 12 metres away, turns anticlockwise: plus. P B, 3 metres away, turns clockwise: minus."
// Empty where a term is none that is said so: products of brackets, letters for numbers.
[[nodiscard]] std::string spokenSum(const Notation&, const Equation&);

} // namespace gusset
