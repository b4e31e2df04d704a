#pragma once
// A model as it is taught: its plan and the derivations of it. Private to lectern.

#include "classroom/lesson/plan.hpp"
#include "core/outcome.hpp"
#include "exchange/json/json_value.hpp"
#include "report/lesson/lesson.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
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
// The index under a key of a request, if it is one below `size`.
[[nodiscard]] std::optional<std::size_t> indexUnder(const JsonValue& request, std::string_view key,
                                                    std::size_t size);

} // namespace gusset
