#pragma once
// The derivation that an item of a plan asks for, as a lesson.

#include "classroom/lesson/plan.hpp"
#include "report/lesson/lesson.hpp"
#include "statics/solve/solution.hpp"

#include <vector>

namespace gusset {

// A truss that moves gives a lesson that ends with the reason. Precondition: the solution is
// solve(truss, choice)'s, and not refused for faults of the model. An issue where a line of
// influence has no path that can be taken, a joint can't be taken in its turn, or a step that is to
// go on with another has a stage of its own.
[[nodiscard]] Outcome<LessonShown> lessonFor(const PhraseBook&, const Truss&, const LoadChoice&,
                                             const Solution&, const LessonItem&);
// One for each item of a plan.
[[nodiscard]] Outcome<std::vector<LessonShown>>
lessonsFor(const PhraseBook&, const Truss&, const LoadChoice&, const Solution&, const LessonPlan&);

} // namespace gusset
