#pragma once
// The lightest profiles as a page asks for them. Private to workshop.

#include "design/sizing/stock.hpp"
#include "exchange/json/json_value.hpp"

#include <string>

namespace gusset {

struct Chosen {
    Sizing sizing;
    SizingWish wish;
    std::size_t leftOut = 0; // profiles that the grade has less strength for
    Issues notes{};          // on the own list
};
// With the kinds, the own list, the grade and the limit of a request.
[[nodiscard]] Outcome<Chosen> chosenFor(const PhraseBook&, const Truss&, const JsonValue& request);

[[nodiscard]] std::string sizeReply(const PhraseBook&, const Truss&, const JsonValue& request);

} // namespace gusset
