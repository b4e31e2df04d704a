#include "desk/request.hpp"

#include "exchange/exercises/answers_file.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/links/link.hpp"

#include <algorithm>
#include <array>

namespace gusset {

namespace {

BuiltTerm readTerm(const JsonValue& value) {
    constexpr std::array<std::string_view, 4> kMultipliers{"whole", "sine", "cosine", "arm"};
    BuiltTerm term;
    if (const JsonValue* sign = value.find("sign")) {
        term.sign = sign->number > 0 ? 1 : sign->number < 0 ? -1 : 0;
    }
    const std::string by = textUnder(value, "by");
    const auto found = std::find(kMultipliers.begin(), kMultipliers.end(), by);
    if (found != kMultipliers.end()) {
        term.by = static_cast<Multiplier>(found - kMultipliers.begin());
    }
    if (const JsonValue* arm = value.find("arm")) {
        term.arm = arm->number;
    }
    return term;
}

} // namespace

Outcome<DeskRequest> readRequest(std::string_view json) {
    const Outcome<JsonValue> parsed = parseJson(json);
    if (!parsed) {
        return parsed.issues();
    }
    const JsonValue& value = parsed.value();
    Outcome<Reading> reading = readModelOrLink(textUnder(value, "model"));
    if (!reading) {
        return reading.issues();
    }
    DeskRequest request;
    request.wants = textUnder(value, "do");
    request.truss = std::move(reading).value().truss;
    request.joint = textUnder(value, "joint");
    request.typed = textUnder(value, "typed");
    request.sum = textUnder(value, "sum");
    request.about = textUnder(value, "about");
    if (const JsonValue* terms = value.find("terms")) {
        for (const JsonValue& term : terms->items) {
            request.terms.push_back(readTerm(term));
        }
    }
    if (const JsonValue* level = value.find("level")) {
        request.level = static_cast<int>(level->number);
    }
    if (request.truss.exercise.empty()) {
        return request;
    }
    const Outcome<Exercise> exercise = readExercise(request.truss);
    if (!exercise) {
        return exercise.issues();
    }
    request.exercise = exercise.value();
    request.answers = blankAnswers(request.truss, *request.exercise);
    if (const std::string answers = textUnder(value, "answers"); !answers.empty()) {
        const Outcome<std::string> text =
            answers.find('{') == answers.npos ? linkedAnswers(answers) : Outcome(answers);
        if (!text) {
            return text.issues();
        }
        const Outcome<Answers> read = readAnswers(request.truss, *request.exercise, text.value());
        if (!read) {
            return read.issues();
        }
        request.answers = read.value();
    }
    return request;
}

} // namespace gusset
