#include "core/markup.hpp"

#include "core/utf8.hpp"

namespace gusset {

namespace {

// XML (1.0, production 2: Char) and HTML allow no controls, surrogates or noncharacters.
bool isForMarkup(const Character& character) {
    const char32_t code = character.code;
    const bool control = (code < 0x20 && code != '\t' && code != '\n' && code != '\r') ||
                         (code >= 0x7F && code < 0xA0);
    const bool noncharacter = (code & 0xFFFEU) == 0xFFFEU || (code >= 0xFDD0 && code <= 0xFDEF);
    return character.sound && !control && !noncharacter;
}

} // namespace

std::string escapeHtml(std::string_view text) {
    std::string out;
    out.reserve(text.size());
    while (!text.empty()) {
        const Character character = firstCharacter(text);
        const std::string_view bytes = text.substr(0, character.bytes);
        text.remove_prefix(character.bytes);
        switch (character.code) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        case '\'':
            out += "&#39;";
            break;
        default:
            out += isForMarkup(character) ? bytes : "\uFFFD";
        }
    }
    return out;
}

} // namespace gusset
