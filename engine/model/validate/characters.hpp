#pragma once
// Which characters of a text are visible. People compare names by eye: invisible characters make
// two different names look the same.

#include "core/statement.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace gusset {

enum class Visibility {
    Seen,
    Blank,   // a space of some width, or a character drawn as one
    Mark,    // an accent, which needs a letter before it
    Joining, // modifies the characters before it: variation selectors and joiners
    Hidden,  // nothing is drawn: controls, zero-width and direction marks, tags, noncharacters
};
[[nodiscard]] Visibility visibilityOf(char32_t);

// Whether a character is invisible after the one before it (0: it is the first): hidden characters,
// and joining ones where they have no effect, as after a Latin letter.
[[nodiscard]] bool isOutOfSight(char32_t before, char32_t code);

// The first invisible character, if there is one. Precondition: UTF-8.
[[nodiscard]] std::optional<char32_t> firstOutOfSight(std::string_view);
[[nodiscard]] std::string withoutHidden(std::string_view); // visible characters of UTF-8

// Whether nothing of a text is visible: it is empty, or only blanks, marks and hidden characters.
[[nodiscard]] bool isBare(std::string_view);

// Untrusted text for people to read, on one line: invisible characters are spelled out, as
// "A[U+200B]", and anything that is not UTF-8 becomes U+FFFD.
[[nodiscard]] std::string spelled(std::string_view);
// The same for a statement: its text, or those of its parts.
[[nodiscard]] Statement spelledOut(Statement);
[[nodiscard]] std::string codePoint(char32_t); // "U+200B"

} // namespace gusset
