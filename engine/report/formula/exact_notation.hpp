#pragma once
// How exact numbers are written for a class that asks for them: 25√5, 50/3, 35√2/2.

#include "report/formula/notation.hpp"

#include <optional>

namespace gusset {

// The known value of a symbol as written in an equation: exact where the class asks for it, the
// working has it and it is short enough to write; otherwise nothing. `value` may have the opposite
// sign, where the force is drawn the other way.
[[nodiscard]] std::optional<Formula> exactTokens(const Notation&, const Symbol&, double value);

// Short enough to help a reader.
[[nodiscard]] bool isShort(const Surd&);
// One number: a whole number or short decimal, a fraction, or a root with its coefficient.
[[nodiscard]] Formula surdTokens(const Notation&, const Surd&);
// Whether surdTokens writes it as a plain number, so that decimals beside it would add nothing.
[[nodiscard]] bool isPlainNumber(const Surd&);

} // namespace gusset
