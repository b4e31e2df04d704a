#include "exchange/json/parser_words.hpp"

#include "phrases/faults/json.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace gusset {

namespace {

constexpr std::array kKnown{
    phrase::kTokenTrue,       phrase::kTokenFalse,         phrase::kTokenNull,
    phrase::kTokenString,     phrase::kTokenNumber,        phrase::kTokenEnd,
    phrase::kInvalidLiteral,  phrase::kQuoteMissing,       phrase::kBackslash,
    phrase::kHexDigits,       phrase::kHighSurrogate,      phrase::kLowSurrogate,
    phrase::kByteOrderMark,   phrase::kDigitAfterExponent, phrase::kDigitAfterPoint,
    phrase::kDigitAfterMinus, phrase::kSignAfterExponent};

struct Halves {
    std::string_view before;
    std::string_view after;
    bool found = false; // else `before` is the whole
};

Halves splitAt(std::string_view text, std::string_view mark, std::size_t at) {
    return at == std::string_view::npos
               ? Halves{text, {}}
               : Halves{text.substr(0, at), text.substr(at + mark.size()), true};
}
Halves splitAtFirst(std::string_view text, std::string_view mark) {
    return splitAt(text, mark, text.find(mark));
}
Halves splitAtLast(std::string_view text, std::string_view mark) {
    return splitAt(text, mark, text.rfind(mark));
}

Statement tokenNamed(std::string_view name) {
    constexpr std::string_view kBrackets = "'[', '{'";
    constexpr std::string_view kOrLiteral = ", or a literal";
    if (name.starts_with(kBrackets) && name.substr(kBrackets.size()) == kOrLiteral) {
        return statement(phrase::kTokenAny, {{"brackets", kBrackets}});
    }
    const auto known = std::find_if(kKnown.begin(), kKnown.end(), [name](Phrase<> phrase) {
        return name == englishOf(phrase.english);
    });
    return known == kKnown.end() ? Statement(name) : Statement(*known);
}

// "invalid string: control character U+0009 (HT) must be escaped to \u0009 or \t"
Statement faultNamed(std::string_view fault) {
    constexpr std::string_view kControl = "invalid string: control character ";
    const Halves halves = splitAtFirst(fault, " must be escaped to ");
    if (!halves.found || !fault.starts_with(kControl)) {
        return tokenNamed(fault);
    }
    const std::string_view character = halves.before.substr(kControl.size());
    const Halves escapes = splitAtFirst(halves.after, " or ");
    return escapes.found ? statement(phrase::kControlCharacterTwo, {{"character", character},
                                                                    {"escape", escapes.before},
                                                                    {"other", escapes.after}})
                         : statement(phrase::kControlCharacter,
                                     {{"character", character}, {"escape", escapes.before}});
}

// `text`: with its closing quote, and what was expected instead.
std::optional<Statement> lastRead(std::string_view fault, std::string_view text) {
    const Halves halves = splitAtLast(text, "'; expected ");
    if (halves.found) {
        return statement(phrase::kLastReadFor, {{"fault", faultNamed(fault)},
                                                {"text", halves.before},
                                                {"wanted", tokenNamed(halves.after)}});
    }
    if (!text.ends_with('\'')) {
        return std::nullopt;
    }
    text.remove_suffix(1);
    return statement(phrase::kLastRead, {{"fault", faultNamed(fault)}, {"text", text}});
}

} // namespace

Statement saidByParser(std::string_view message) {
    constexpr std::string_view kUnexpected = "unexpected ";
    if (const Halves read = splitAtFirst(message, "; last read: '"); read.found) {
        return lastRead(read.before, read.after).value_or(message);
    }
    if (!message.starts_with(kUnexpected)) {
        return message;
    }
    const Halves halves = splitAtFirst(message.substr(kUnexpected.size()), "; expected ");
    return halves.found ? statement(phrase::kUnexpectedFor, {{"given", tokenNamed(halves.before)},
                                                             {"wanted", tokenNamed(halves.after)}})
                        : statement(phrase::kUnexpected, {{"given", tokenNamed(halves.before)}});
}

} // namespace gusset
