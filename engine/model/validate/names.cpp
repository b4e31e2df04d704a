// Labels, ids, cases and titles: what a name needs so that it can be shown and stored anywhere.

#include "core/utf8.hpp"
#include "model/validate/characters.hpp"
#include "model/validate/validate.hpp"
#include "phrases/faults/faults.hpp"

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

std::optional<Statement> faultOfName(std::string_view name, std::size_t longest) {
    if (name.empty()) {
        return phrase::kNameEmpty;
    }
    if (faultOfUtf8(name)) {
        return phrase::kNameNotText;
    }
    if (countCharacters(name) > longest) {
        return statement(phrase::kNameTooLong, {{"n", longest}});
    }
    if (const std::optional<char32_t> hidden = firstOutOfSight(name)) {
        return breaksLines(*hidden) ? Statement(phrase::kNameBreaksLine)
                                    : statement(phrase::kNameHides, {{"code", codePoint(*hidden)}});
    }
    if (isBare(name)) {
        return phrase::kNameBare;
    }
    return std::nullopt;
}

} // namespace gusset
