#pragma once
// What the JSON parser finds wrong. The English is the parser's own and is recognised by it
// (exchange/json/parser_words). Brackets and braces are parts, as those in a phrase enclose the
// name of one.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kUnexpected = "unexpected {given}"_phrase;
inline constexpr auto kUnexpectedFor = "unexpected {given}; expected {wanted}"_phrase;
inline constexpr auto kLastRead = "{fault}; last read: '{text}'"_phrase;
inline constexpr auto kLastReadFor = "{fault}; last read: '{text}'; expected {wanted}"_phrase;

inline constexpr auto kTokenTrue = "true literal"_phrase;
inline constexpr auto kTokenFalse = "false literal"_phrase;
inline constexpr auto kTokenNull = "null literal"_phrase;
inline constexpr auto kTokenString = "string literal"_phrase;
inline constexpr auto kTokenNumber = "number literal"_phrase;
inline constexpr auto kTokenEnd = "end of input"_phrase;
inline constexpr auto kTokenAny = "{brackets}, or a literal"_phrase;

inline constexpr auto kInvalidLiteral = "invalid literal"_phrase;
inline constexpr auto kQuoteMissing = "invalid string: missing closing quote"_phrase;
inline constexpr auto kBackslash = "invalid string: forbidden character after backslash"_phrase;
inline constexpr auto kHexDigits = "invalid string: '\\u' must be followed by 4 hex digits"_phrase;
inline constexpr auto kHighSurrogate =
    "invalid string: surrogate U+D800..U+DBFF must be followed by U+DC00..U+DFFF"_phrase;
inline constexpr auto kLowSurrogate =
    "invalid string: surrogate U+DC00..U+DFFF must follow U+D800..U+DBFF"_phrase;
inline constexpr auto kControlCharacter =
    "invalid string: control character {character} must be escaped to {escape}"_phrase;
inline constexpr auto kControlCharacterTwo =
    "invalid string: control character {character} must be escaped to {escape} or {other}"_phrase;
inline constexpr auto kDigitAfterExponent =
    "invalid number; expected digit after exponent sign"_phrase;
inline constexpr auto kSignAfterExponent =
    "invalid number; expected '+', '-', or digit after exponent"_phrase;
inline constexpr auto kDigitAfterPoint = "invalid number; expected digit after '.'"_phrase;
inline constexpr auto kDigitAfterMinus = "invalid number; expected digit after '-'"_phrase;
inline constexpr auto kByteOrderMark = "invalid BOM; must be 0xEF 0xBB 0xBF if given"_phrase;

} // namespace gusset::phrase
