#pragma once
// Two trusses beside each other, and a truss with one joint elsewhere. Private to workshop.

#include "core/phrase.hpp"
#include "exchange/json/json_value.hpp"
#include "model/truss/truss.hpp"

#include <string>

namespace gusset {

// See workshop.hpp for the requests.
[[nodiscard]] std::string compareReply(const PhraseBook&, const Truss&, const JsonValue& request);
[[nodiscard]] std::string moveReply(const PhraseBook&, const Truss&, const JsonValue& request);

} // namespace gusset
