// Labels, ids, cases and titles: what a name must be to be shown and stored anywhere.

#include "model/validate.hpp"

#include <algorithm>

namespace gusset {

namespace {

// Characters of UTF-8 text, or nothing when it isn't.
std::optional<std::size_t> countCharacters(std::string_view text) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < text.size(); ++count) {
        const auto lead = static_cast<unsigned char>(text[i]);
        const std::size_t size = lead < 0x80   ? 1
                                 : lead < 0xC2 ? 0
                                 : lead < 0xE0 ? 2
                                 : lead < 0xF0 ? 3
                                 : lead < 0xF5 ? 4
                                               : 0;
        if (size == 0 || i + size > text.size()) {
            return std::nullopt;
        }
        for (std::size_t k = 1; k < size; ++k) {
            if ((static_cast<unsigned char>(text[i + k]) & 0xC0) != 0x80) {
                return std::nullopt;
            }
        }
        i += size;
    }
    return count;
}

} // namespace

std::optional<std::string> faultOfName(std::string_view name, std::size_t longest) {
    const std::optional<std::size_t> characters = countCharacters(name);
    if (!characters) {
        return "is not UTF-8 text: type it anew";
    }
    if (*characters == 0) {
        return "is empty: give it a name";
    }
    if (*characters > longest) {
        return "is longer than " + std::to_string(longest) + " characters: shorten it";
    }
    const auto isControl = [](char c) {
        const auto code = static_cast<unsigned char>(c);
        return code < 0x20 || code == 0x7F;
    };
    if (std::any_of(name.begin(), name.end(), isControl)) {
        return "has a line break or another control character in it: remove it";
    }
    return std::nullopt;
}

} // namespace gusset
