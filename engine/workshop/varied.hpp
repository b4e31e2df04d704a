#pragma once
// Mass, use and deflection while the rise or the number of panels varies. Private to workshop.

#include "exchange/json/json_value.hpp"
#include "model/truss/truss.hpp"

#include <string>

namespace gusset {

// Whether the truss is as the outline in it makes it.
[[nodiscard]] bool isFromOutline(const PhraseBook&, const Truss&);

[[nodiscard]] std::string varyReply(const PhraseBook&, const Truss&, const JsonValue& request);

} // namespace gusset
