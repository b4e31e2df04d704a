#include "desk/request.hpp"

#include "classroom/exercise/answer_names.hpp"
#include "exchange/exercises/answers_file.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/links/link.hpp"
#include "phrases/faults/exercises.hpp"

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

Outcome<ChosenBody> readBody(const JsonValue& request, const Truss& truss) {
    ChosenBody body;
    body.joint = findJoint(truss, textUnder(request, "joint"));
    body.part = findJoint(truss, textUnder(request, "part"));
    const std::vector<std::string> names = answerNames(truss);
    const JsonValue* cut = request.find("cut");
    for (const JsonValue& name : cut ? cut->items : std::vector<JsonValue>{}) {
        const auto found = std::find(names.begin(), names.end(), name.text);
        if (found == names.end()) {
            return Issue{IssueCode::UnknownName, phrase::kPlaceAnswers,
                         statement(phrase::kNoSuchAnswer, {{"name", name.text}})};
        }
        body.cut.push_back({static_cast<int>(found - names.begin())});
    }
    return body;
}

void readEquation(const JsonValue& value, DeskRequest& request) {
    constexpr std::array<std::string_view, 3> kSumWords{"x", "y", "moments"};
    const auto sum =
        std::find(kSumWords.begin(), kSumWords.end(), textUnder(value, "sum")) - kSumWords.begin();
    request.sum = sum < 3 ? static_cast<SumKind>(sum) : SumKind::X;
    request.about = findJoint(request.truss, textUnder(value, "about"));
    if (const JsonValue* terms = value.find("terms")) {
        for (const JsonValue& term : terms->items) {
            request.terms.push_back(readTerm(term));
        }
    }
    request.asksJudgement = isYes(value, "judge");
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
    const Outcome<ChosenBody> body = readBody(value, request.truss);
    if (!body) {
        return body.issues();
    }
    request.body = body.value();
    request.isNarrow = isYes(value, "narrow");
    request.typed = textUnder(value, "typed");
    request.typedFor = textUnder(value, "what");
    readEquation(value, request);
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
