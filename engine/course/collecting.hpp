#pragma once
// Marking what a class has handed in. Private to course.

#include "course/request.hpp"
#include "exchange/json/json_text.hpp"

namespace gusset {

[[nodiscard]] Issues markHandedIn(const CourseWish&, JsonText&);

} // namespace gusset
