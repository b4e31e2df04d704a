#include "cli/exercise_command.hpp"

#include "classroom/exercise/answers.hpp"
#include "classroom/exercise/key.hpp"
#include "cli/asked.hpp"
#include "cli/names.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/links/link.hpp"
#include "model/quantity/quantity_input.hpp"

#include <algorithm>
#include <array>

namespace gusset::cli {

namespace {

Issue isNone(std::string_view option, std::string says) {
    return {IssueCode::OutOfRange, std::string(option), std::move(says)};
}

std::vector<std::string_view> partsOf(std::string_view list) {
    std::vector<std::string_view> parts;
    while (true) {
        const auto comma = list.find(',');
        parts.push_back(list.substr(0, comma));
        if (comma == list.npos) {
            return parts;
        }
        list.remove_prefix(comma + 1);
    }
}

Outcome<Question> questionNamed(const Truss& truss, std::string_view name,
                                const std::vector<MemberId>& members) {
    constexpr std::string_view kDisplacement = "displacement:";
    if (name == "reactions") {
        return Question{AskReactions{}, 0};
    }
    if (name == "forces") {
        return Question{AskForces{members}, 0};
    }
    if (name == "zero") {
        return Question{AskZeroMembers{}, 0};
    }
    if (name == "determinacy") {
        return Question{AskDeterminacy{}, 0};
    }
    if (name == "steps") {
        return Question{AskSteps{}, 0};
    }
    if (name.starts_with(kDisplacement)) {
        const Outcome<JointAxis> asked = jointAxisNamed(truss, name.substr(kDisplacement.size()));
        if (!asked) {
            return asked.issues();
        }
        const Axis axis = asked.value().axis == DisplacementAxis::X ? Axis::X : Axis::Y;
        return Question{AskDisplacement{asked.value().joint, axis}, 0};
    }
    return isNone("--ask",
                  "takes some of reactions,forces,zero,determinacy,displacement:C:y,steps");
}

Outcome<double> numberUnder(const Arguments& arguments, std::string_view option, double most) {
    const Outcome<double> number = readNumber(arguments.valueOf(option));
    if (!number || number.value() < 0 || number.value() > most) {
        return isNone(option, "takes a number from 0 to " + std::to_string(static_cast<int>(most)));
    }
    return number.value();
}

std::optional<Issues> readRules(const Arguments& arguments, Exercise& exercise) {
    if (arguments.has("--within")) {
        const Outcome<double> percent = numberUnder(arguments, "--within", 100);
        if (!percent) {
            return percent.issues();
        }
        exercise.tolerance.percent = percent.value();
    }
    if (arguments.has("--figures")) {
        const Outcome<double> figures = numberUnder(arguments, "--figures", 12);
        if (!figures) {
            return figures.issues();
        }
        exercise.tolerance.figures = static_cast<int>(figures.value());
    }
    if (arguments.has("--hints")) {
        const auto found =
            std::find(kHintWords.begin(), kHintWords.end(), arguments.valueOf("--hints"));
        if (found == kHintWords.end()) {
            return Issues{isNone("--hints", "is one of none, bodies, equations, terms")};
        }
        exercise.hints = static_cast<Hints>(found - kHintWords.begin());
    }
    return std::nullopt;
}

Outcome<Exercise> exerciseAsked(const Arguments& arguments, const Truss& truss) {
    Exercise exercise;
    exercise.text = arguments.valueOf("--says");
    exercise.loads = choiceOf(arguments);
    exercise.checking = arguments.has("--check-at-the-end") ? Checking::AtTheEnd : Checking::AtOnce;
    std::vector<MemberId> members = allMembers(truss);
    if (arguments.has("--members")) {
        Outcome<std::vector<MemberId>> named = membersNamed(truss, arguments.valueOf("--members"));
        if (!named) {
            return named.issues();
        }
        members = std::move(named).value();
    }
    const std::string asked =
        arguments.has("--ask") ? arguments.valueOf("--ask") : std::string("reactions,forces");
    for (const std::string_view name : partsOf(asked)) {
        const Outcome<Question> question = questionNamed(truss, name, members);
        if (!question) {
            return question.issues();
        }
        exercise.questions.push_back(question.value());
    }
    if (const std::optional<Issues> faults = readRules(arguments, exercise)) {
        return *faults;
    }
    return exercise;
}

} // namespace

Answer answerExercise(const PhraseBook&, const Arguments& arguments, const Reading& reading) {
    Truss truss = reading.truss;
    const Outcome<Exercise> asked = exerciseAsked(arguments, truss);
    if (!asked) {
        return {Exit::BadInput, {}, asked.issues()};
    }
    truss.exercise = exerciseText(truss, asked.value());
    const Outcome<Exercise> exercise = readExercise(truss); // as whoever opens it will
    if (!exercise) {
        return {Exit::BadInput, {}, exercise.issues()};
    }
    if (const Outcome<AnswerKey> key = keyOf(truss, exercise.value()); !key) {
        return {Exit::BadInput, {}, key.issues()};
    }
    if (!arguments.has("--link") && !arguments.has("--address")) {
        return {Exit::Answered, writeModel(truss), {}};
    }
    const Outcome<std::string> link = exerciseLink(truss);
    if (!link) {
        return {Exit::BadInput, {}, link.issues()};
    }
    return {Exit::Answered, exerciseAddress(arguments, link.value()) + "\n", {}};
}

} // namespace gusset::cli
