#include "cli/commands.hpp"

#include "cli/check_command.hpp"
#include "cli/drawing_commands.hpp"
#include "cli/exercise_command.hpp"
#include "cli/export_command.hpp"
#include "cli/form_command.hpp"
#include "cli/handout_command.hpp"
#include "cli/lesson_command.hpp"
#include "cli/names.hpp"
#include "cli/profiles_command.hpp"
#include "cli/report_command.hpp"
#include "cli/size_command.hpp"
#include "cli/statics_commands.hpp"
#include "cli/variants_command.hpp"
#include "cli/verdicts.hpp"
#include "cli/working_command.hpp"
#include "exchange/links/link.hpp"
#include "exchange/results/json_results.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"
#include "statics/solve/solution.hpp"

namespace gusset::cli {

namespace {

// What text and JSON say themselves, but has no place in a table.
Issues notesOfTable(const Writer& writer, const Solution& solution, const ExactSolution& exact) {
    Issues notes = notesOfMechanism(solution.status, solution.solved);
    if (std::string whyNot = inexactSentence(writer, exact.whyNot); !whyNot.empty()) {
        notes.push_back({IssueCode::NotComputed, "--exact", std::move(whyNot)});
    }
    notes = joined(std::move(notes), notesOnForces(trustSentences(writer, solution)));
    return joined(std::move(notes), solution.notes);
}

Answer answerSolve(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Solution solution = solved(reading, choiceOf(arguments));
    Answer answer{exitOf(solution), {}, solution.errors};
    const ExactSolution exact = arguments.has("--exact") && solution.solved
                                    ? solveExactly(reading.truss, choiceOf(arguments))
                                    : ExactSolution{};
    if (arguments.has("--json")) {
        answer.text = solutionJson({book, reading.truss}, solution, exact);
    } else if (answer.exit != Exit::BadInput && arguments.has("--csv")) {
        answer.text = resultsCsv(reading.truss, solution, exact);
        answer.faults = notesOfTable({book, reading.truss}, solution, exact);
    } else if (answer.exit != Exit::BadInput) {
        answer.text =
            resultsText({book, reading.truss}, solution) + exactText({book, reading.truss}, exact);
    }
    return answer;
}

Answer answerCheck(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    if (asksForMembers(arguments)) {
        return answerMembers(book, arguments, reading);
    }
    if (!arguments.options.empty()) {
        return {Exit::WrongUse,
                {},
                {{IssueCode::Missing, arguments.options.front().first,
                  "goes with checks of members: ask for --members, or --member A-B"}}};
    }
    const Solution solution = solved(reading, {});
    Answer answer{exitOf(solution), {}, solution.errors};
    for (const std::string& line : verdict({book, reading.truss}, solution)) {
        answer.text += line + "\n";
    }
    for (const Issue& note : solution.notes) {
        answer.text += faultLine(book, note) + "\n";
    }
    return answer;
}

// For commands whose answer has no place for notes: which names were read differently from the
// file. Unknown keys are kept and do not affect a working.
Answer withNotes(Answer answer, const Reading& reading) {
    for (const Issue& note : reading.notes) {
        if (note.code != IssueCode::UnknownKey && answer.exit <= Exit::Mechanism) {
            answer.faults.push_back(note);
        }
    }
    return answer;
}

Answer answerLink(const Reading& reading) {
    const Outcome<std::string> link = openableLink(reading.truss);
    if (!link) {
        return {Exit::BadInput, {}, link.issues()};
    }
    return {Exit::Answered, "#" + link.value() + "\n", {}};
}

Answer answerOf(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const std::string_view name = arguments.command->name;
    if (name == "solve") {
        return answerSolve(book, arguments, reading);
    }
    if (name == "working") {
        return withNotes(answerWorking(book, arguments, reading), reading);
    }
    if (name == "lesson") {
        return withNotes(answerLesson(book, arguments, reading), reading);
    }
    if (name == "influence") {
        return answerInfluence(book, arguments, reading);
    }
    if (name == "envelope") {
        return answerEnvelope(book, arguments, reading);
    }
    if (name == "check") {
        return answerCheck(book, arguments, reading);
    }
    if (name == "report") {
        return withNotes(answerReport(book, arguments, reading), reading);
    }
    if (name == "exercise") {
        return withNotes(answerExercise(book, arguments, reading), reading);
    }
    if (name == "export") {
        return withNotes(answerExport(book, arguments, {{"", reading}}), reading);
    }
    if (name == "handout") {
        return withNotes(answerHandout(book, arguments, {{"", reading}}), reading);
    }
    if (name == "variants") {
        return withNotes(answerVariants(arguments, reading), reading);
    }
    if (name == "lines") {
        return withNotes(answerLines(book, arguments, reading), reading);
    }
    if (name == "form") {
        return withNotes(answerForm(book, arguments, reading), reading);
    }
    if (name == "combine") {
        return withNotes(answerCombine(book, arguments, reading), reading);
    }
    if (name == "size") {
        return withNotes(answerSize(book, arguments, reading), reading);
    }
    if (name == "profiles") {
        return answerProfiles(book, arguments);
    }
    if (name == "link") {
        return withNotes(answerLink(reading), reading);
    }
    return withNotes({Exit::Answered, writeModel(reading.truss), {}}, reading);
}

} // namespace

Answer refuse(const PhraseBook& book, const Arguments& arguments, const Issues& faults) {
    Solution none;
    none.errors = faults;
    return {Exit::BadInput, arguments.has("--json") ? writeResults(book, {}, none) : std::string(),
            faults};
}

Answer answer(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    Answer given = answerOf(book, arguments, reading);
    const bool isRefused = given.exit == Exit::BadInput && given.text.empty();
    return isRefused ? refuse(book, arguments, given.faults) : given;
}

Answer answerSeveral(const PhraseBook& book, const Arguments& arguments,
                     const std::vector<NamedReading>& readings) {
    Answer given = arguments.command->name == "handout" ? answerHandout(book, arguments, readings)
                                                        : answerExport(book, arguments, readings);
    for (const NamedReading& it : readings) {
        const Answer noted = withNotes({given.exit, {}, {}}, it.reading);
        given.faults = joined(std::move(given.faults), inFile(book, noted.faults, it.name));
    }
    return given;
}

Issues inFile(const PhraseBook& book, const Issues& issues, const std::string& name) {
    Issues placed = issues;
    for (Issue& issue : placed) {
        if (!name.empty()) {
            issue.at = issue.at.empty() ? name : name + ": " + said(book, issue.at);
        }
    }
    return placed;
}

} // namespace gusset::cli
