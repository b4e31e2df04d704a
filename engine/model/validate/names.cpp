// Labels, ids, cases and titles: what a name needs so that it can be shown and stored anywhere.

#include "core/utf8.hpp"
#include "model/validate/characters.hpp"
#include "model/validate/validate.hpp"

namespace gusset {

namespace {

std::size_t countCharacters(std::string_view text) {
    std::size_t count = 0;
    for (; !text.empty(); ++count) {
        text.remove_prefix(firstCharacter(text).bytes);
    }
    return count;
}

bool breaksLines(char32_t code) {
    return code < 0x20 || (code >= 0x7F && code < 0xA0) || code == 0x2028 || code == 0x2029;
}

} // namespace

std::optional<std::string> faultOfName(std::string_view name, std::size_t longest) {
    if (name.empty()) {
        return "is empty: give it a name";
    }
    if (faultOfUtf8(name)) {
        return "is not UTF-8 text: type it anew";
    }
    if (countCharacters(name) > longest) {
        return "is longer than " + std::to_string(longest) + " characters: shorten it";
    }
    if (const std::optional<char32_t> hidden = firstOutOfSight(name)) {
        return breaksLines(*hidden)
                   ? "has a line break or another control character in it: remove it"
                   : "has a character in it that can't be seen, " + codePoint(*hidden) +
                         ": type it anew";
    }
    if (isBare(name)) {
        return "has nothing in it that can be seen: give it a letter, a figure or a sign";
    }
    return std::nullopt;
}

} // namespace gusset
