#pragma once
// An answer as people type it: "12,5 kN T", "-7.5", "3.2 C", "0", "→ 5". A number without a unit is
// in the model's. A minus, and C or an arrow to the left or down, turn the sign; T, an arrow to the
// right or up, and a plus say that it is positive; a bare number leaves the sign open.

#include "classroom/exercise/answers.hpp"
#include "core/outcome.hpp"

#include <string_view>

namespace gusset {

// A blank answer for blank text; an issue for what is no answer.
[[nodiscard]] Outcome<WrittenForce> readWritten(std::string_view text, ForceUnit);

} // namespace gusset
