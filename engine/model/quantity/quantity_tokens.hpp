#pragma once
// Typed text split into numbers, words and signs. Typographic signs are replaced by plain ones: − ×
// · ÷ √ ′ ″.

#include "core/outcome.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

struct QuantityToken {
    enum class Kind { Number, Word, Sign, End };
    Kind kind = Kind::End;
    double value = 0;     // of a Number
    bool isWhole = false; // a Number written with digits only
    std::string text;     // as typed; Sign: one of + - * / ( ) , ; @
};

inline constexpr std::size_t kLongestInput = 200; // bytes

[[nodiscard]] std::string withPlainSigns(std::string_view text);

// The last token is an End. A comma between two digits is a decimal comma; where it might equally
// be a thousands separator ("1,000") it is refused.
[[nodiscard]] Outcome<std::vector<QuantityToken>> quantityTokens(std::string_view text);

} // namespace gusset
