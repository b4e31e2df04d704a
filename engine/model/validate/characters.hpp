#pragma once
// Which characters of a text a person can see. Names are compared by people: what can't be seen in
// them makes two of them look the same.

#include <optional>
#include <string>
#include <string_view>

namespace gusset {

enum class Visibility {
    Seen,
    Blank,   // a space of some width, or a sign that is drawn as one
    Mark,    // an accent, which needs a letter before it
    Joining, // forms letters or signs before it: variation selectors and joiners
    Hidden,  // nothing is drawn: controls, zero-width and direction marks, tags, noncharacters
};
[[nodiscard]] Visibility visibilityOf(char32_t);

// Whether a character has no place behind the one before it (0: it is the first): what is hidden,
// and what is joining where it forms nothing, as behind a Latin letter.
[[nodiscard]] bool isOutOfSight(char32_t before, char32_t code);

// The first character that is out of sight, if there is one. Precondition: UTF-8.
[[nodiscard]] std::optional<char32_t> firstOutOfSight(std::string_view);
[[nodiscard]] std::string withoutHidden(std::string_view); // of UTF-8, all that is in sight

// Whether nothing of a text is seen: it is empty, or blanks, marks and hidden characters alone.
[[nodiscard]] bool isBare(std::string_view);

// A stranger's words for a person to read, on one line: what is out of sight is spelled, as
// "A[U+200B]", what is no UTF-8 becomes U+FFFD.
[[nodiscard]] std::string spelled(std::string_view);
[[nodiscard]] std::string codePoint(char32_t); // "U+200B"

} // namespace gusset
