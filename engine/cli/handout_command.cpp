#include "cli/handout_command.hpp"

#include "cli/asked.hpp"
#include "cli/verdicts.hpp"
#include "exchange/exercises/exercise_file.hpp"
#include "exchange/exercises/series.hpp"
#include "report/classroom/handout.hpp"

namespace gusset::cli {

namespace {

Outcome<HandoutChoices> handoutChoicesOf(const Arguments& arguments) {
    HandoutChoices choices;
    choices.kind = arguments.has("--key")       ? HandoutKind::Key
                   : arguments.has("--answers") ? HandoutKind::Answers
                                                : HandoutKind::Questions;
    if (arguments.has("--paper")) {
        const auto size = sizeNamed(arguments.valueOf("--paper"));
        if (!size) {
            return Issue{IssueCode::UnknownName, "--paper", "is A4 or Letter"};
        }
        choices.size = *size;
    }
    return choices;
}

// A model that asks nothing itself is linked with the question that its sheet puts.
Outcome<std::string> linkOf(const Arguments& arguments, const Truss& truss,
                            const Exercise& exercise) {
    if (!arguments.has("--address")) {
        return std::string();
    }
    Truss asking = truss;
    if (truss.exercise.empty()) {
        asking.exercise = exerciseText(truss, exercise);
    }
    const Outcome<std::string> link = studentLink(asking, exercise);
    if (!link) {
        return link.issues();
    }
    return exerciseAddress(arguments, link.value());
}

Outcome<std::string> sheetOf(const PhraseBook& book, const Arguments& arguments, const Truss& truss,
                             HandoutChoices choices) {
    const Outcome<Exercise> exercise = askedOf(truss);
    if (!exercise) {
        return exercise.issues();
    }
    Outcome<std::string> link = linkOf(arguments, truss, exercise.value());
    if (!link) {
        return link.issues();
    }
    choices.link = std::move(link).value();
    return handoutSheet({book, truss}, exercise.value(), choices);
}

} // namespace

Answer answerHandout(const PhraseBook& book, const Arguments& arguments,
                     const std::vector<NamedReading>& readings) {
    const Outcome<HandoutChoices> choices = handoutChoicesOf(arguments);
    if (!choices) {
        return {Exit::BadInput, {}, choices.issues()};
    }
    std::string sheets;
    for (const NamedReading& it : readings) {
        const Outcome<std::string> sheet =
            sheetOf(book, arguments, it.reading.truss, choices.value());
        if (!sheet) {
            return {exitOf(sheet.issues()), {}, inFile(book, sheet.issues(), it.name)};
        }
        sheets += sheet.value();
    }
    return {Exit::Answered,
            handoutHtml({book, readings.front().reading.truss}, sheets, choices.value()),
            {}};
}

} // namespace gusset::cli
