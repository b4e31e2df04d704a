#pragma once
// Requests to the course, read. Private to course.

#include "classroom/exercise/exercise.hpp"
#include "core/outcome.hpp"
#include "core/phrase.hpp"
#include "course/course.hpp"
#include "exchange/json/json_value.hpp"
#include "model/truss/truss.hpp"

#include <string_view>
#include <vector>

namespace gusset {

struct CourseWish {
    const PhraseBook& book;
    const JsonValue& request;
    const CourseTold& told; // may be empty
};

struct AskedTruss {
    Truss truss;
    Exercise exercise;
};
// A model that must ask something.
[[nodiscard]] Outcome<AskedTruss> readAsked(std::string_view model);
// Those under "models": at least one.
[[nodiscard]] Outcome<std::vector<AskedTruss>> readAllAsked(const JsonValue& request);

// The items of the list under a key; none if there is no such list.
[[nodiscard]] const std::vector<JsonValue>& itemsUnder(const JsonValue& object,
                                                       std::string_view key);

} // namespace gusset
