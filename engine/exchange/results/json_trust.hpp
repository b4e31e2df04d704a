#pragma once
// How far results can be trusted, alike wherever they stand as JSON.

#include "exchange/json/json_text.hpp"
#include "statics/equilibrium/trust.hpp"

namespace gusset {

// "condition", "error" and, where rounding leaves fewer than kResultDigits, "figures".
void writeTrust(JsonText&, const Trust&);

} // namespace gusset
