#pragma once
// How far results can be trusted, written the same way in every JSON output.

#include "exchange/json/json_text.hpp"
#include "statics/equilibrium/trust.hpp"

namespace gusset {

// "condition", "error" and, where rounding leaves fewer than kResultDigits, "figures".
void writeTrust(JsonText&, const Trust&);

} // namespace gusset
