#pragma once
// Setting an exercise. Private to course.

#include "course/request.hpp"
#include "exchange/json/json_text.hpp"

namespace gusset {

[[nodiscard]] Issues openForSetting(const CourseWish&, JsonText&);
[[nodiscard]] Issues setExercise(const CourseWish&, JsonText&);

} // namespace gusset
