#pragma once
// UTF-8 as the Unicode Standard defines it (version 14.0, section 3.9, table 3-7): no overlong
// forms, no surrogates, nothing beyond U+10FFFF.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace gusset {

inline constexpr char32_t kReplacement = 0xFFFD; // stands in for bytes that are not text

struct Character {
    char32_t code = kReplacement;
    std::size_t bytes = 1;
    bool sound = false; // false: the bytes are not UTF-8, and count as one kReplacement
};

// The first character of a text. Precondition: the text is not empty.
[[nodiscard]] Character firstCharacter(std::string_view);

// Position of the first byte that is not UTF-8; nothing when the text is valid.
[[nodiscard]] std::optional<std::size_t> faultOfUtf8(std::string_view);

// The same text, with U+FFFD in place of anything that is not UTF-8.
[[nodiscard]] std::string soundUtf8(std::string_view);

void appendCharacter(std::string&, char32_t);

} // namespace gusset
