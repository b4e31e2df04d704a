#pragma once
// How a class that wants exact numbers writes them: 25√5, 50/3, 35√2/2.

#include "report/formula/notation.hpp"

#include <optional>

namespace gusset {

// The known value of a symbol, as it stands in an equation: exact where the class wants that and
// the working has it, and it is short enough to be written; else nothing. `value` may have the
// other sign, where the force is drawn the other way.
[[nodiscard]] std::optional<Formula> exactTokens(const Notation&, const Symbol&, double value);

// One number: a whole number or short decimal, a fraction, a root with what it is multiplied by.
[[nodiscard]] Formula surdTokens(const Notation&, const Surd&);
// Whether surdTokens writes it as a plain number, so that decimals beside it say nothing more.
[[nodiscard]] bool isPlainNumber(const Surd&);

} // namespace gusset
