#include "course/setting.hpp"

#include "classroom/exercise/key.hpp"
#include "course/request.hpp"
#include "desk/given.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/links/link.hpp"
#include "statics/moving/load_paths.hpp"

#include <optional>
#include <utility>

namespace gusset {

namespace {

std::vector<std::string> labelsOf(const Truss& truss, const std::vector<JointId>& joints) {
    std::vector<std::string> labels;
    for (const JointId joint : joints) {
        labels.push_back(truss.joints[joint.at()].label);
    }
    return labels;
}

void writeChoices(JsonText& out, const Truss& truss) {
    out.text("coordinateUnit", symbolOf(truss.units.length));
    out.texts("cases", caseNames(truss));
    std::vector<std::string> combinations;
    for (const Combination& combination : truss.combinations) {
        combinations.push_back(combination.id);
    }
    out.texts("combinations", combinations);
    out.texts("lowestPath", labelsOf(truss, lowestPath(truss)));
    out.texts("highestPath", labelsOf(truss, highestPath(truss)));
}

// Those that the link asks to show, where no question says which.
Outcome<LoadChoice> loadsOf(const std::string& model, const Truss& truss) {
    return looksLikeLink(model) ? linkedLoads(model, truss) : LoadChoice{};
}

} // namespace

Issues openForSetting(const CourseWish& wish, JsonText& out) {
    const std::string model = textUnder(wish.request, "model");
    const Outcome<Reading> reading = readModelOrLink(model);
    if (!reading) {
        return reading.issues();
    }
    const Truss& truss = reading.value().truss;
    std::optional<Exercise> exercise;
    if (!truss.exercise.empty()) {
        Outcome<Exercise> read = readExercise(truss);
        if (!read) {
            return read.issues();
        }
        exercise = std::move(read).value();
    }
    const Outcome<LoadChoice> loads =
        exercise ? Outcome<LoadChoice>(exercise->loads) : loadsOf(model, truss);
    if (!loads) {
        return loads.issues();
    }
    writeGiven(out, {wish.book, truss}, loads.value(), {});
    writeChoices(out, truss);
    if (exercise) {
        out.key("exercise");
        out.json(exerciseText(truss, *exercise));
    } else if (const std::string name = choiceName(loads.value()); !name.empty()) {
        out.text(isOneCase(loads.value()) ? "case" : "combination", name);
    }
    return {};
}

Issues setExercise(const CourseWish& wish, JsonText& out) {
    Outcome<Reading> reading = readModelOrLink(textUnder(wish.request, "model"));
    if (!reading) {
        return reading.issues();
    }
    Truss truss = std::move(reading).value().truss;
    const JsonValue* asked = wish.request.find("exercise");
    if (asked) {
        truss.exercise = jsonText(*asked);
    }
    const Outcome<Exercise> exercise = readExercise(truss);
    if (!exercise) {
        return exercise.issues();
    }
    if (asked) {
        truss.exercise = exerciseText(truss, exercise.value()); // the shortest that says it
    }
    const Outcome<AnswerKey> key = keyOf(truss, exercise.value());
    if (!key) {
        return key.issues();
    }
    const Outcome<std::string> link = exerciseLink(truss);
    if (!link) {
        return link.issues();
    }
    writeGiven(out, {wish.book, truss}, exercise.value().loads, exercise.value().questions);
    out.text("link", link.value());
    out.text("mark", exerciseMark(truss));
    return {};
}

} // namespace gusset
