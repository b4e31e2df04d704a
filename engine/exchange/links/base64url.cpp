#include "exchange/links/base64url.hpp"

namespace gusset {

namespace {

constexpr std::string_view kAlphabet =
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

} // namespace

std::string toBase64Url(const Bytes& bytes) {
    std::string text;
    std::uint32_t bits = 0;
    int count = 0;
    for (const std::uint8_t byte : bytes) {
        bits = (bits << 8) | byte;
        count += 8;
        while (count >= 6) {
            count -= 6;
            text += kAlphabet[(bits >> count) & 63];
        }
    }
    if (count > 0) {
        text += kAlphabet[(bits << (6 - count)) & 63];
    }
    return text;
}

bool isBase64Url(char c) { return kAlphabet.find(c) != std::string_view::npos; }

std::optional<Bytes> fromBase64Url(std::string_view text) {
    Bytes bytes;
    std::uint32_t bits = 0;
    int count = 0;
    for (const char c : text) {
        const std::size_t value = kAlphabet.find(c);
        if (value == std::string_view::npos) {
            return std::nullopt;
        }
        bits = (bits << 6) | static_cast<std::uint32_t>(value);
        count += 6;
        if (count >= 8) {
            count -= 8;
            bytes.push_back(static_cast<std::uint8_t>(bits >> count));
        }
    }
    const bool isCut = count >= 6 || (bits & ((1u << count) - 1)) != 0;
    return isCut ? std::nullopt : std::optional(std::move(bytes));
}

std::size_t base64UrlLength(std::size_t bytes) { return (bytes * 8 + 5) / 6; }

} // namespace gusset
