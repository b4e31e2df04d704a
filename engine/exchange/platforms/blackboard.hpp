#pragma once
// Blackboard's upload of questions: UTF-8, one question a line, its parts separated by tabs, no
// head and no blank lines (help.blackboard.com, "Upload Questions"). No pictures and no feedback.

#include "classroom/exercise/quiz.hpp"
#include "core/outcome.hpp"

#include <string>
#include <vector>

namespace gusset {

inline constexpr std::size_t kBlackboardRecords = 500; // of one file

// An issue if there are more questions than one file may have.
[[nodiscard]] Outcome<std::string> blackboardText(const std::vector<Quiz>&);

} // namespace gusset
