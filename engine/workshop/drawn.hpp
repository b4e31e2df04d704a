#pragma once
// Drawings in and out. Private to workshop.

#include "core/phrase.hpp"
#include "exchange/json/json_value.hpp"
#include "model/truss/truss.hpp"

#include <string>

namespace gusset {

[[nodiscard]] std::string traceReply(const PhraseBook&, const JsonValue& request);
[[nodiscard]] std::string linesReply(const PhraseBook&, const Truss&, const JsonValue& request);

} // namespace gusset
