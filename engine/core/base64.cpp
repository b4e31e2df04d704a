#include "core/base64.hpp"

#include <string_view>

namespace gusset {

std::string base64(std::span<const std::uint8_t> bytes) {
    constexpr std::string_view kDigits =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string text;
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        unsigned block = 0;
        for (std::size_t k = 0; k < 3; ++k) {
            block = block << 8 | (i + k < bytes.size() ? bytes[i + k] : 0u);
        }
        for (std::size_t k = 0; k < 4; ++k) {
            text += i + k <= bytes.size() ? kDigits[block >> (18 - 6 * k) & 63u] : '=';
        }
    }
    return text;
}

} // namespace gusset
