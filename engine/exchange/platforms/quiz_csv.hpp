#pragma once
// A table for spreadsheets, and for platforms whose import maps the columns of any table.

#include "classroom/exercise/quiz.hpp"

#include <string>
#include <vector>

namespace gusset {

// A row for each field. A choice has its options instead of a unit, and the right one as its value.
[[nodiscard]] std::string quizCsv(const std::vector<Quiz>&);

} // namespace gusset
