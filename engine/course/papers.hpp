#pragma once
// What is handed out: sheets of paper, and questions for learning platforms. Private to course.

#include "course/request.hpp"
#include "exchange/json/json_text.hpp"

namespace gusset {

[[nodiscard]] Issues makeSheets(const CourseWish&, JsonText&);
[[nodiscard]] Issues exportQuestions(const CourseWish&, JsonText&);

} // namespace gusset
