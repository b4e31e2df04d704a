#pragma once
// What the writers of this folder need of a quiz.

#include "classroom/exercise/quiz.hpp"

#include <string>
#include <vector>

namespace gusset {

// Whether an answer of the other sign is to be told from a wrong one: the two ranges lie apart.
[[nodiscard]] bool tellsSign(const NumberField&);
[[nodiscard]] double pointsOf(const QuizField&);
[[nodiscard]] double pointsOf(const QuizItem&);
[[nodiscard]] const std::string& labelOf(const QuizField&);

// Each field as a question of its own, for formats that take one answer a question.
[[nodiscard]] std::vector<QuizItem> separateItems(const Quiz&);

// As files have them: ASCII, a hyphen for minus, twelve figures.
[[nodiscard]] std::string answerNumber(double);
// Line breaks and tabs as spaces.
[[nodiscard]] std::string onOneLine(const std::string&);

// Its category in Moodle. A slash in the title would begin a category within it; two are one that
// is read as written.
[[nodiscard]] std::string categoryOf(const Quiz&);

// Introduction and question as HTML; `source` is where the picture is found, empty for none.
[[nodiscard]] std::string questionHtml(const Quiz&, const std::string& text,
                                       const std::string& source);
// Introduction and question as one line of text.
[[nodiscard]] std::string questionLine(const Quiz&, const std::string& text);

[[nodiscard]] const char* pictureEnding(const QuizPicture&); // "png" or "svg"
[[nodiscard]] const std::string& pictureBytes(const QuizPicture&);
[[nodiscard]] bool hasPicture(const QuizPicture&);

} // namespace gusset
