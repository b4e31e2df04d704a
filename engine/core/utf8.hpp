#pragma once
// UTF-8 as the Unicode Standard defines it (version 14.0, section 3.9, table 3-7): no overlong
// forms, no surrogates, nothing beyond U+10FFFF.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace gusset {

inline constexpr char32_t kReplacement = 0xFFFD; // stands for what is not text

struct Character {
    char32_t code = kReplacement;
    std::size_t bytes = 1;
    bool sound = false; // false: the bytes are not UTF-8, and stand for one kReplacement
};

// The character that a text begins with. Precondition: the text is not empty.
[[nodiscard]] Character firstCharacter(std::string_view);

// Where the first byte is that is not UTF-8; nothing when the text is sound.
[[nodiscard]] std::optional<std::size_t> faultOfUtf8(std::string_view);

// The same text, with U+FFFD in place of what is not UTF-8.
[[nodiscard]] std::string soundUtf8(std::string_view);

void appendCharacter(std::string&, char32_t);

} // namespace gusset
