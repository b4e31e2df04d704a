#pragma once
// The formats by name, as on the command line.

#include "classroom/exercise/quiz.hpp"
#include "core/outcome.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

enum class QuizFormat { Moodle, Cloze, Canvas, Gift, Blackboard, Qti2, Qti3, Csv };

// "moodle", "cloze", "qti12", "gift", "blackboard", "qti21", "qti3", "csv".
[[nodiscard]] std::optional<QuizFormat> quizFormatNamed(std::string_view);
[[nodiscard]] std::string quizFormatNames(); // all of them, with commas
// Whether a question may have several fields there.
[[nodiscard]] bool takesSeveralFields(QuizFormat);
// The file: text, or a zip.
[[nodiscard]] Outcome<std::string> quizFile(QuizFormat, const std::vector<Quiz>&);

} // namespace gusset
