#include "classroom/exercise/typed_answer.hpp"

#include "core/utf8.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/faults/exercises.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <utility>

namespace gusset {

namespace {

constexpr double kLargestAnswer = 1e15; // beyond it a number is no force

constexpr std::array<std::pair<std::string_view, int>, 6> kMemberWords{
    {{"(t)", 1}, {"(c)", -1}, {"tension", 1}, {"compression", -1}, {"t", 1}, {"c", -1}}};
constexpr std::array<std::pair<std::string_view, Vec2>, 4> kArrows{
    {{"→", {1, 0}}, {"←", {-1, 0}}, {"↑", {0, 1}}, {"↓", {0, -1}}}};

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

// In capitals or not.
bool isWord(std::string_view text, std::string_view word) {
    const auto small = [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    };
    return std::equal(text.begin(), text.end(), word.begin(), word.end(),
                      [&](char a, char b) { return small(a) == b; });
}

// Whether a word stands at an end of the text, which then loses it.
bool takeWord(std::string_view& text, std::string_view word) {
    if (isWord(text.substr(0, word.size()), word)) {
        text = trimmed(text.substr(word.size()));
        return true;
    }
    if (text.size() < word.size() || !isWord(text.substr(text.size() - word.size()), word)) {
        return false;
    }
    // A letter behind a letter belongs to a unit, unless a whole one stands before it: kNT.
    const std::string_view before = trimmed(text.substr(0, text.size() - word.size()));
    const bool isApart = word.size() > 1 || before.size() + word.size() < text.size();
    const bool isBehindUnit = before.ends_with("N") || before.ends_with("f");
    if (before.empty() ||
        !(isApart || isBehindUnit || (before.back() >= '0' && before.back() <= '9'))) {
        return false;
    }
    text = before;
    return true;
}

// The sense that a word at either end of the text gives; 0 if there is none.
int takeSense(std::string_view& text, const SenseRule& rule) {
    if (rule.words != SenseRule::Words::OfReaction) {
        for (const auto& [word, sign] : kMemberWords) {
            if (takeWord(text, word)) {
                return sign;
            }
        }
    }
    if (rule.words != SenseRule::Words::OfMember) {
        for (const auto& [arrow, way] : kArrows) {
            const double along = dot(way, rule.along);
            if (along != 0 && takeWord(text, arrow)) {
                return along > 0 ? 1 : -1;
            }
        }
    }
    return 0;
}

// `readSize` reads what is left when the sense is taken away.
template <class ReadSize>
Outcome<WrittenForce> readSigned(std::string_view text, const SenseRule& rule, ReadSize readSize) {
    const std::string plain = withPlainNumbers(trimmed(text));
    std::string_view rest = trimmed(plain);
    if (rest.empty()) {
        return WrittenForce{};
    }
    const Issue noForce{IssueCode::Syntax, phrase::kPlaceAnswers,
                        statement(phrase::kNotTyped, {{"text", std::string(trimmed(text))}})};
    const int sense = takeSense(rest, rule);
    bool isPlus = rule.isSigned;
    if (rest.starts_with('+')) {
        isPlus = true;
        rest = trimmed(rest.substr(1));
    }
    const Outcome<double> size = readSize(rest);
    if (!size || std::abs(size.value()) >= kLargestAnswer) {
        return noForce;
    }
    WrittenForce written{std::abs(size.value()), std::nullopt};
    if (written.size == 0.0) {
        written.sign = 0;
    } else if (sense != 0) {
        written.sign = sense;
    } else if (size.value() < 0 || isPlus) {
        written.sign = size.value() < 0 ? -1 : 1;
    }
    return written;
}

} // namespace

std::string withPlainNumbers(std::string_view text) {
    constexpr std::array<char32_t, 7> kDashes{0x2010, 0x2011, 0x2012, 0x2013,
                                              0x2014, 0x2212, 0xFE63};
    constexpr std::array<char32_t, 4> kSpaces{0x00A0, 0x2007, 0x2009, 0x202F};
    const std::size_t last = text.find_last_of(".,");
    const bool hasBoth = text.find('.') != text.npos && text.find(',') != text.npos;
    std::string plain;
    for (std::size_t at = 0; at < text.size();) {
        const Character next = firstCharacter(text.substr(at));
        const auto is = [&](const auto& list) {
            return std::find(list.begin(), list.end(), next.code) != list.end();
        };
        const bool isGroup = hasBoth && at != last && (next.code == '.' || next.code == ',');
        if (is(kDashes)) {
            plain += '-';
        } else if (is(kSpaces)) {
            plain += ' ';
        } else if (!isGroup) {
            appendCharacter(plain, next.code);
        }
        at += next.bytes;
    }
    return plain;
}

Outcome<WrittenForce> readWritten(std::string_view text, ForceUnit unit, const SenseRule& rule) {
    return readSigned(text, rule, [&](std::string_view size) { return readForce(size, unit); });
}

Outcome<WrittenForce> readWrittenLength(std::string_view text, LengthUnit unit) {
    return readSigned(text, {SenseRule::Words::OfReaction, {1, 1}, false},
                      [&](std::string_view size) { return readLength(size, unit); });
}

Outcome<WrittenForce> readWrittenNumber(std::string_view text) {
    return readSigned(text, {SenseRule::Words::OfReaction, {0, 0}, false}, readNumber);
}

Outcome<int> readWrittenCount(std::string_view text) {
    constexpr std::size_t kMostFigures = 4;
    const std::string plain = withPlainNumbers(trimmed(text));
    const bool isNegative = plain.starts_with('-');
    const std::string_view figures = std::string_view(plain).substr(isNegative ? 1 : 0);
    int count = 0;
    for (const char figure : figures) {
        if (figure < '0' || figure > '9' || figures.size() > kMostFigures) {
            count = -1;
            break;
        }
        count = 10 * count + (figure - '0');
    }
    if (figures.empty() || count < 0) {
        return Issue{IssueCode::Syntax, phrase::kPlaceAnswers,
                     statement(phrase::kNoWholeNumber, {{"text", std::string(trimmed(text))}})};
    }
    return isNegative ? -count : count;
}

} // namespace gusset
