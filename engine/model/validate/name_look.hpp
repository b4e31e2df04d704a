#pragma once
// Which names can't be told apart by eye. Covered, from the Unicode Character Database: hidden
// characters; spaces of any width and number; letters with accents of the Latin, Greek and Cyrillic
// scripts, kana and Hangul, as one character or several, with the marks in any order that looks the
// same; signs that the standard treats as one (the ohm sign and omega). Not covered: letters with
// accents of other scripts.

#include <string>
#include <string_view>

namespace gusset {

// The same text for all names that look alike. Precondition: UTF-8.
[[nodiscard]] std::string lookOf(std::string_view name);

// The same text also for names in letters of several alphabets that look alike, such as the capital
// A of Latin, Greek and Cyrillic.
[[nodiscard]] std::string shapeOf(std::string_view name);

} // namespace gusset
