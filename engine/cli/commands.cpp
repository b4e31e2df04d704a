#include "cli/commands.hpp"

#include "cli/check_command.hpp"
#include "cli/names.hpp"
#include "cli/statics_commands.hpp"
#include "cli/verdicts.hpp"
#include "exchange/links/link.hpp"
#include "exchange/results/json_results.hpp"
#include "hand/stages/explain.hpp"
#include "hand/stages/sections.hpp"
#include "report/derivation/force_method_text.hpp"
#include "report/derivation/force_polygon_sketch.hpp"
#include "report/derivation/force_polygon_text.hpp"
#include "report/derivation/influence_by_hand_text.hpp"
#include "report/derivation/unit_load_text.hpp"
#include "report/derivation/working_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"
#include "report/sketch/sketch_svg.hpp"
#include "statics/solve/solution.hpp"

namespace gusset::cli {

namespace {

constexpr double kBetweenSketches = 24; // px

// The reader's notes belong to the results: nothing in a file is ignored silently.
Solution solved(const Reading& reading, const LoadChoice& choice) {
    Solution solution = solve(reading.truss, choice);
    solution.notes.insert(solution.notes.begin(), reading.notes.begin(), reading.notes.end());
    return solution;
}

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

// The whole working, or the part asked for.
Outcome<Working> askedWorking(const Arguments& arguments, const Truss& truss,
                              const Solution& solution) {
    const LoadChoice choice = choiceOf(arguments);
    if (arguments.has("--member")) {
        const Outcome<MemberId> member = memberNamed(truss, arguments.valueOf("--member"));
        if (!member) {
            return member.issues();
        }
        return explain(truss, choice, solution,
                       {.kind = SymbolKind::MemberForce, .member = member.value()});
    }
    if (arguments.has("--section")) {
        const auto cut = membersNamed(truss, arguments.valueOf("--section"));
        if (!cut) {
            return cut.issues();
        }
        return workCut(truss, choice, solution, cut.value());
    }
    return workOut(truss, choice, solution);
}

Answer answerDisplacement(const PhraseBook& book, const Arguments& arguments, const Truss& truss,
                          const Solution& solution) {
    const Outcome<JointAxis> asked = jointAxisNamed(truss, arguments.valueOf("--displacement"));
    if (!asked) {
        return {Exit::BadInput, {}, asked.issues()};
    }
    const UnitLoadTable table = unitLoadTable(truss, choiceOf(arguments), solution,
                                              asked.value().joint, asked.value().axis);
    return {exitOf(solution),
            arguments.has("--html") ? unitLoadHtml({book, truss}, table)
                                    : unitLoadText({book, truss}, table),
            {}};
}

// The whole method, or the working behind one column of its table: N0, n1 or n2.
Answer answerForceMethod(const PhraseBook& book, const Arguments& arguments, const Truss& truss,
                         const Solution& solution) {
    const ForceMethod method = forceMethod(truss, choiceOf(arguments), solution);
    const Exit exit = exitOf(solution);
    if (!arguments.has("--released") || method.end != ForceMethodEnd::Complete) {
        return {exit, passagesOf(arguments, forceMethodPassages({book, truss}, method)), {}};
    }
    const std::string column = arguments.valueOf("--released");
    if (column == "N0") {
        return {
            exit,
            passagesOf(arguments, workingPassages({book, method.givenTruss}, method.givenWorking)),
            {}};
    }
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        if (column == "n" + std::to_string(i + 1)) {
            return {exit,
                    passagesOf(arguments, workingPassages({book, method.unitTrusses[i]},
                                                          method.unitWorkings[i])),
                    {}};
        }
    }
    return {Exit::BadInput,
            {},
            {{IssueCode::UnknownName, column,
              "is no column of the force method here: ask for N0, or n1 of the first redundant"}}};
}

Answer answerInfluenceByHand(const PhraseBook& book, const Arguments& arguments,
                             const Reading& given) {
    if (!arguments.has("--path")) {
        return {Exit::WrongUse,
                {},
                {{IssueCode::Missing, "--influence", "needs the path of the load: --path A,B,C"}}};
    }
    const Reading reading = withoutLooseJoints(given);
    const Truss& truss = reading.truss;
    const Outcome<std::vector<JointId>> path = pathNamed(truss, arguments.valueOf("--path"));
    if (!path) {
        return {Exit::BadInput, {}, path.issues()};
    }
    const Outcome<Effect> effect = effectNamed(truss, arguments.valueOf("--influence"));
    if (!effect) {
        return {Exit::BadInput, {}, effect.issues()};
    }
    const auto analysis = analysePath(truss, path.value());
    if (!analysis) {
        return noAnswer(book, arguments, truss, analysis.issues());
    }
    const InfluenceByHand line = influenceByHand(truss, path.value(), effect.value());
    const auto own = reading.notes.begin() + static_cast<std::ptrdiff_t>(given.notes.size());
    return withSentences({Exit::Answered,
                          passagesOf(arguments, influencePassages({book, truss}, line)),
                          {own, reading.notes.end()}},
                         arguments, trustSentences({book, truss}, analysis.value().reliance));
}

bool wantsForceMethod(const Arguments& arguments, const Solution& solution) {
    const bool part = arguments.has("--member") || arguments.has("--section");
    return arguments.has("--force-method") || arguments.has("--released") ||
           (solution.status == Status::Indeterminate && !part);
}

// An SVG has no place for the reason, which goes to standard error.
Answer noPicture(const Writer& writer, const ForcePolygon& polygon) {
    std::string says = forcePolygonText(writer, polygon);
    says.erase(says.find_last_not_of('\n') + 1);
    return {Exit::Mechanism, {}, {{IssueCode::NotComputed, "--polygon", std::move(says)}}};
}

// The force polygon, and the truss with its spaces lettered beside it.
Answer answerPolygon(const PhraseBook& book, const Arguments& arguments, const Truss& truss,
                     const Solution& solution) {
    const LoadChoice choice = choiceOf(arguments);
    const ForcePolygon polygon = forcePolygon(truss, choice, solution);
    const bool drawn = arguments.has("--svg") || arguments.has("--html");
    if (polygon.refusal != PolygonRefusal::None && arguments.has("--svg")) {
        return noPicture({book, truss}, polygon);
    }
    if (polygon.refusal != PolygonRefusal::None || !drawn) {
        return {exitOf(solution),
                arguments.has("--html") ? forcePolygonHtml({book, truss}, polygon)
                                        : forcePolygonText({book, truss}, polygon),
                notesOfMechanism(solution.status, solution.solved)};
    }
    const Working working = workOut(truss, choice, solution);
    const Sketch spaces = spacesSketch(notationOf({book, truss}, working), polygon);
    const Sketch lines = polygonDrawing({book, truss}, polygon, {}).sketch;
    if (arguments.has("--svg")) {
        return {exitOf(solution), svgOf(sideBySide(spaces, lines, kBetweenSketches)), {}};
    }
    return {exitOf(solution),
            figureHtml(spaces) + figureHtml(lines) + forcePolygonHtml({book, truss}, polygon),
            {}};
}

Answer derivation(const PhraseBook& book, const Arguments& arguments, const Reading& reading,
                  const Solution& solution) {
    if (arguments.has("--displacement")) {
        return answerDisplacement(book, arguments, reading.truss, solution);
    }
    if (arguments.has("--polygon")) {
        return answerPolygon(book, arguments, reading.truss, solution);
    }
    if (wantsForceMethod(arguments, solution)) {
        return answerForceMethod(book, arguments, reading.truss, solution);
    }
    const Outcome<Working> working = askedWorking(arguments, reading.truss, solution);
    if (!working) {
        return {Exit::BadInput, {}, working.issues()};
    }
    return {exitOf(solution),
            passagesOf(arguments, workingPassages({book, reading.truss}, working.value())),
            {}};
}

Answer answerWorking(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Solution solution = solved(reading, choiceOf(arguments));
    if (const Exit exit = exitOf(solution); exit == Exit::BadInput) {
        return {exit, {}, solution.errors};
    }
    const bool isDrawn = arguments.has("--svg");
    if (isDrawn && !arguments.has("--polygon")) {
        return {Exit::WrongUse,
                {},
                {{IssueCode::Missing, "working",
                  "draws as SVG with --polygon only: its steps come as --html"}}};
    }
    if (arguments.has("--influence")) { // independent of the model's loads
        return answerInfluenceByHand(book, arguments, reading);
    }
    Answer answer = derivation(book, arguments, reading, solution);
    if (!solution.solved || answer.text.empty()) {
        return answer;
    }
    const std::vector<std::string> warnings = workingSentences({book, reading.truss}, solution);
    if (isDrawn) {
        answer.faults = joined(std::move(answer.faults), notesOnForces(warnings));
        return answer;
    }
    return withSentences(std::move(answer), arguments, warnings);
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
    if (name == "influence") {
        return answerInfluence(book, arguments, reading);
    }
    if (name == "envelope") {
        return answerEnvelope(book, arguments, reading);
    }
    if (name == "check") {
        return answerCheck(book, arguments, reading);
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

} // namespace gusset::cli
