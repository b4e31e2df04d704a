#include "model/validate/characters.hpp"

#include "core/utf8.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace gusset {

namespace {

struct Range {
    char32_t first;
    char32_t last;
    Visibility visibility;
};

// From the Unicode Character Database, version 14.0. Hidden: Cc, Zl, Zp, the noncharacters, the
// Egyptian hieroglyph format controls and Default_Ignorable_Code_Point (DerivedCoreProperties.txt).
// Joining: the variation selectors and Join_Control (PropList.txt) among the last. Mark: the blocks
// of combining diacritical marks. Blank: Zs and the empty Braille pattern. Sorted.
using enum Visibility;
constexpr std::array kRanges = std::to_array<Range>({
    {0x0000, 0x001F, Hidden},    {0x0020, 0x0020, Blank},    {0x007F, 0x009F, Hidden},
    {0x00A0, 0x00A0, Blank},     {0x00AD, 0x00AD, Hidden},   {0x0300, 0x034E, Mark},
    {0x034F, 0x034F, Hidden},    {0x0350, 0x036F, Mark},     {0x061C, 0x061C, Hidden},
    {0x115F, 0x1160, Hidden},    {0x1680, 0x1680, Blank},    {0x17B4, 0x17B5, Hidden},
    {0x180B, 0x180D, Joining},   {0x180E, 0x180E, Hidden},   {0x180F, 0x180F, Joining},
    {0x1AB0, 0x1AFF, Mark},      {0x1DC0, 0x1DFF, Mark},     {0x2000, 0x200A, Blank},
    {0x200B, 0x200B, Hidden},    {0x200C, 0x200D, Joining},  {0x200E, 0x200F, Hidden},
    {0x2028, 0x202E, Hidden},    {0x202F, 0x202F, Blank},    {0x205F, 0x205F, Blank},
    {0x2060, 0x206F, Hidden},    {0x20D0, 0x20FF, Mark},     {0x2800, 0x2800, Blank},
    {0x3000, 0x3000, Blank},     {0x3164, 0x3164, Hidden},   {0xFDD0, 0xFDEF, Hidden},
    {0xFE00, 0xFE0F, Joining},   {0xFE20, 0xFE2F, Mark},     {0xFEFF, 0xFEFF, Hidden},
    {0xFFA0, 0xFFA0, Hidden},    {0xFFF0, 0xFFFC, Hidden},   {0x13430, 0x1343F, Hidden},
    {0x1BCA0, 0x1BCA3, Hidden},  {0x1D173, 0x1D17A, Hidden}, {0xE0000, 0xE00FF, Hidden},
    {0xE0100, 0xE01EF, Joining}, {0xE01F0, 0xE0FFF, Hidden},
});

bool isNoncharacter(char32_t code) { return (code & 0xFFFEU) == 0xFFFEU; }

// Joiners and variation selectors matter in scripts from Hebrew on, ideographs and emoji; never
// after Latin, Greek, Cyrillic and Armenian letters, which have lower code points.
constexpr char32_t kFirstThatJoins = 0x0590;

bool isPlain(char c) { return c > 0x20 && c < 0x7F; }

// Calls back with each character and the one before it (after several joining ones, the one before
// them all), until the callback returns false.
template <class Each>
void forEachCharacter(std::string_view text, Each each) {
    char32_t before = 0;
    while (!text.empty()) {
        const Character character = firstCharacter(text);
        if (!each(before, character, text.substr(0, character.bytes))) {
            return;
        }
        before = visibilityOf(character.code) == Joining ? before : character.code;
        text.remove_prefix(character.bytes);
    }
}

} // namespace

Visibility visibilityOf(char32_t code) {
    const auto at =
        std::upper_bound(kRanges.begin(), kRanges.end(), code,
                         [](char32_t it, const Range& range) { return it < range.first; });
    if (at != kRanges.begin() && code <= std::prev(at)->last) {
        return std::prev(at)->visibility;
    }
    return isNoncharacter(code) ? Hidden : Seen;
}

bool isOutOfSight(char32_t before, char32_t code) {
    const Visibility visibility = visibilityOf(code);
    return visibility == Hidden ||
           (visibility == Joining && (before < kFirstThatJoins || visibilityOf(before) == Blank ||
                                      visibilityOf(before) == Hidden));
}

std::optional<char32_t> firstOutOfSight(std::string_view text) {
    std::optional<char32_t> found;
    forEachCharacter(text, [&](char32_t before, const Character& it, std::string_view) {
        if (isOutOfSight(before, it.code)) {
            found = it.code;
        }
        return !found;
    });
    return found;
}

std::string withoutHidden(std::string_view text) {
    std::string seen;
    forEachCharacter(text, [&](char32_t before, const Character& it, std::string_view bytes) {
        seen += isOutOfSight(before, it.code) ? std::string_view{} : bytes;
        return true;
    });
    return seen;
}

bool isBare(std::string_view text) {
    bool bare = true;
    forEachCharacter(text, [&](char32_t, const Character& it, std::string_view) {
        bare = visibilityOf(it.code) != Seen;
        return bare;
    });
    return bare;
}

std::string spelled(std::string_view text) {
    const auto isShown = [](char c) { return isPlain(c) || c == ' '; };
    if (std::all_of(text.begin(), text.end(), isShown)) {
        return std::string(text);
    }
    std::string words;
    forEachCharacter(text, [&](char32_t before, const Character& it, std::string_view bytes) {
        if (!it.sound) {
            appendCharacter(words, kReplacement);
        } else if (isOutOfSight(before, it.code)) {
            words += "[" + codePoint(it.code) + "]";
        } else {
            words += bytes;
        }
        return true;
    });
    return words;
}

Statement spelledOut(Statement statement) {
    statement.text = spelled(statement.text);
    for (StatementPart& part : statement.parts) {
        part.value = spelledOut(std::move(part.value));
    }
    return statement;
}

std::string codePoint(char32_t code) {
    constexpr std::string_view kHex = "0123456789ABCDEF";
    std::string digits;
    for (; code != 0 || digits.size() < 4; code >>= 4U) {
        digits.insert(digits.begin(), kHex[code & 0xFU]);
    }
    return "U+" + digits;
}

} // namespace gusset
