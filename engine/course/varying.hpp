#pragma once
// A truss from nothing, and variants of one. Private to course.

#include "course/request.hpp"
#include "exchange/json/json_text.hpp"

namespace gusset {

[[nodiscard]] Issues makeFormFromNothing(const CourseWish&, JsonText&);
[[nodiscard]] Issues makeSeries(const CourseWish&, JsonText&);

} // namespace gusset
