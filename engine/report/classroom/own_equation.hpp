#pragma once
// An equation with a student's own numbers, as the working would write it.

#include "classroom/marking/marking.hpp"
#include "report/formula/notation.hpp"

namespace gusset {

// ΣF_y = 0: 36 + 0.6 F_AC = 0: all in numbers but the answer that it is solved for.
[[nodiscard]] Formula ownEquationFormula(const Notation&, const OwnEquation&);
[[nodiscard]] std::string ownEquationText(const Notation&, const OwnEquation&);

} // namespace gusset
