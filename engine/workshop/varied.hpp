#pragma once
// Another rise or number of panels, and mass, use and deflection while they vary. Private to
// workshop.

#include "exchange/json/json_text.hpp"
#include "exchange/json/json_value.hpp"
#include "model/truss/truss.hpp"

#include <string>

namespace gusset {

// Whether the truss is as the outline in it makes it.
[[nodiscard]] bool isFromOutline(const PhraseBook&, const Truss&);

// Into an object that is open: the sizes of the outline that can be varied, and how far.
// Precondition: isFromOutline.
void writeShape(JsonText&, const Truss&);

[[nodiscard]] std::string reshapeReply(const PhraseBook&, const Truss&, const JsonValue& request);
[[nodiscard]] std::string varyReply(const PhraseBook&, const Truss&, const JsonValue& request);

} // namespace gusset
