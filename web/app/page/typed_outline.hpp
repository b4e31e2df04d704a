#pragma once
// An outline as it is typed: texts in place of numbers.

#include "core/outcome.hpp"
#include "design/loading/outline.hpp"

#include <string>
#include <string_view>

namespace gusset {

// See starterOf. Units and the sign of decimals are those of the board.
[[nodiscard]] Outcome<Outline> typedOutline(const Truss& board, std::string_view typed);

} // namespace gusset
