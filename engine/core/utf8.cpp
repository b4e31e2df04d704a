#include "core/utf8.hpp"

#include <cassert>

namespace gusset {

namespace {

// Well-formed sequences, table 3-7: the number of bytes, and the range of the second.
struct Sequence {
    std::size_t bytes = 0; // 0: no character begins with this byte
    unsigned low = 0x80;
    unsigned high = 0xBF;
};

Sequence sequenceOf(unsigned lead) {
    if (lead < 0x80) {
        return {1};
    }
    if (lead < 0xC2 || lead > 0xF4) {
        return {};
    }
    if (lead < 0xE0) {
        return {2};
    }
    if (lead < 0xF0) {
        return {3, lead == 0xE0 ? 0xA0U : 0x80U, lead == 0xED ? 0x9FU : 0xBFU};
    }
    return {4, lead == 0xF0 ? 0x90U : 0x80U, lead == 0xF4 ? 0x8FU : 0xBFU};
}

} // namespace

Character firstCharacter(std::string_view text) {
    assert(!text.empty());
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const Sequence sequence = sequenceOf(byte(0));
    if (sequence.bytes <= 1) {
        return sequence.bytes == 1 ? Character{byte(0), 1, true} : Character{};
    }
    char32_t code = byte(0) & (0x7FU >> sequence.bytes);
    for (std::size_t i = 1; i < sequence.bytes; ++i) {
        const unsigned low = i == 1 ? sequence.low : 0x80U;
        const unsigned high = i == 1 ? sequence.high : 0xBFU;
        if (i >= text.size() || byte(i) < low || byte(i) > high) {
            return {kReplacement, i, false};
        }
        code = code << 6U | (byte(i) & 0x3FU);
    }
    return {code, sequence.bytes, true};
}

std::optional<std::size_t> faultOfUtf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const Character character = firstCharacter(text.substr(at));
        if (!character.sound) {
            return at;
        }
        at += character.bytes;
    }
    return std::nullopt;
}

std::string soundUtf8(std::string_view text) {
    std::string sound;
    sound.reserve(text.size());
    while (!text.empty()) {
        const Character character = firstCharacter(text);
        if (character.sound) {
            sound += text.substr(0, character.bytes);
        } else {
            appendCharacter(sound, kReplacement);
        }
        text.remove_prefix(character.bytes);
    }
    return sound;
}

void appendCharacter(std::string& text, char32_t code) {
    const auto put = [&](char32_t byte) { text += static_cast<char>(byte); };
    const auto rest = [&](int shift) { put(0x80U | ((code >> shift) & 0x3FU)); };
    if (code < 0x80) {
        put(code);
    } else if (code < 0x800) {
        put(0xC0U | code >> 6U);
        rest(0);
    } else if (code < 0x10000) {
        put(0xE0U | code >> 12U);
        rest(6);
        rest(0);
    } else {
        put(0xF0U | code >> 18U);
        rest(12);
        rest(6);
        rest(0);
    }
}

} // namespace gusset
