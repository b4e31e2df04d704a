#pragma once
// A model as it is taught: its plan and the derivations of it. Private to lectern.

#include "classroom/lesson/plan.hpp"
#include "core/outcome.hpp"
#include "report/lesson/lesson.hpp"

#include <string>
#include <vector>

namespace gusset {

struct Opened {
    Truss truss{};
    LoadChoice loads{};
    LessonPlan plan{};
    std::vector<LessonShown> lessons{}; // one for each item of the plan
};
// A text of a model, or a link.
[[nodiscard]] Outcome<Opened> openLesson(const PhraseBook&, const std::string& model);
[[nodiscard]] Outcome<Opened> openLesson(const PhraseBook&, Truss, const LoadChoice&);

} // namespace gusset
