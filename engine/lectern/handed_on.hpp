#pragma once
// Replies with what is handed on of a lesson. Private to lectern; see lectern.hpp.

#include "exchange/json/json_value.hpp"
#include "lectern/opened.hpp"

#include <cstddef>
#include <string>

namespace gusset {

[[nodiscard]] std::string slidesReply(const PhraseBook&, const Opened&, const JsonValue& request);
[[nodiscard]] std::string pictureReply(const PhraseBook&, const Opened&, const JsonValue& request);
// Precondition: the lesson has such a step.
[[nodiscard]] std::string animationReply(const PhraseBook&, const Opened&, std::size_t item,
                                         std::size_t step, const JsonValue& request);
[[nodiscard]] std::string zipReply(const PhraseBook&, const JsonValue& request);

} // namespace gusset
