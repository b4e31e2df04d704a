#include "course/request.hpp"

#include "exchange/exercises/exercise_file.hpp"
#include "exchange/links/link.hpp"
#include "phrases/faults/exercises.hpp"

#include <utility>

namespace gusset {

Outcome<AskedTruss> readAsked(std::string_view model) {
    Outcome<Reading> reading = readModelOrLink(model);
    if (!reading) {
        return reading.issues();
    }
    AskedTruss asked{std::move(reading).value().truss, {}};
    Outcome<Exercise> exercise = readExercise(asked.truss);
    if (!exercise) {
        return exercise.issues();
    }
    asked.exercise = std::move(exercise).value();
    return asked;
}

Outcome<std::vector<AskedTruss>> readAllAsked(const JsonValue& request) {
    std::vector<AskedTruss> all;
    for (const JsonValue& model : itemsUnder(request, "models")) {
        Outcome<AskedTruss> asked = readAsked(model.text);
        if (!asked) {
            return asked.issues();
        }
        all.push_back(std::move(asked).value());
    }
    if (all.empty()) {
        return Issue{IssueCode::Missing, phrase::kPlaceExercise, phrase::kNoExercise};
    }
    return all;
}

const std::vector<JsonValue>& itemsUnder(const JsonValue& object, std::string_view key) {
    static const std::vector<JsonValue> kNone;
    const JsonValue* list = object.find(key);
    return list ? list->items : kNone;
}

} // namespace gusset
