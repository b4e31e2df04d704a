#include "cli/verdicts.hpp"

#include "exchange/results/json_results.hpp"
#include "model/edit/removal.hpp"
#include "report/results/movement_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"

#include <algorithm>

namespace gusset::cli {

namespace {

// Commands that answer with a table by default give sentences only if asked for text.
bool wantsWords(const Arguments& arguments) {
    const std::string_view name = arguments.command->name;
    const bool isTable = name == "influence" || name == "envelope";
    return arguments.has("--text") || !(isTable || arguments.has("--csv") ||
                                        arguments.has("--svg") || arguments.has("--html"));
}

std::string describe(const PhraseBook& book, const Arguments& arguments, const Truss& truss,
                     const Solution& solution) {
    if (arguments.has("--json")) {
        return solutionJson({book, truss}, solution);
    }
    std::string text;
    if (wantsWords(arguments)) {
        for (const std::string& line : verdict({book, truss}, solution)) {
            text += line + "\n";
        }
    }
    return text;
}

} // namespace

Exit exitOf(const Solution& solution) {
    if (!solution.errors.empty()) {
        return Exit::BadInput;
    }
    return solution.solved ? Exit::Answered : Exit::Mechanism;
}

Exit exitOf(const Issues& issues) {
    return std::all_of(issues.begin(), issues.end(),
                       [](const Issue& it) { return it.code == IssueCode::Unstable; })
               ? Exit::Mechanism
               : Exit::BadInput;
}

std::string solutionJson(const Writer& writer, const Solution& solution,
                         const ExactSolution& exact) {
    ResultSentences sentences{.assumed = assumptionSentences(writer, solution.assumed),
                              .inexact = inexactSentence(writer, exact.whyNot),
                              .warnings = trustSentences(writer, solution)};
    for (const Mechanism& mechanism : solution.mechanisms) {
        sentences.mechanisms.push_back(mechanismSentence(writer, mechanism));
    }
    return writeResults(writer.book, writer.truss, solution, sentences, exact);
}

Solution solved(const Reading& reading, const LoadChoice& choice) {
    Solution solution = solve(reading.truss, choice);
    solution.notes.insert(solution.notes.begin(), reading.notes.begin(), reading.notes.end());
    return solution;
}

Solution unsolved(const Truss& truss) {
    Solution solution = solve(truss);
    solution.solved = solution.displaced = false;
    solution.errors.clear();
    return solution;
}

Answer noAnswer(const PhraseBook& book, const Arguments& arguments, const Truss& truss,
                const Issues& faults) {
    if (exitOf(faults) != Exit::Mechanism) {
        return refuse(book, arguments, faults);
    }
    return {Exit::Mechanism, describe(book, arguments, truss, unsolved(truss)), faults};
}

Issues notesOfMechanism(Status status, bool solved) {
    if (status != Status::Mechanism) {
        return {};
    }
    return {{IssueCode::Unstable, "members",
             solved ? "the truss is a mechanism: these loads happen to be in balance on it, and "
                      "any other would set it moving"
                    : "the truss is a mechanism: it has no forces before it is stable"}};
}

Issues joined(Issues issues, const Issues& more) {
    issues.insert(issues.end(), more.begin(), more.end());
    return issues;
}

Issues notesOnForces(const std::vector<std::string>& sentences) {
    Issues notes;
    for (const std::string& sentence : sentences) {
        notes.push_back({IssueCode::Suspicious, "forces", sentence});
    }
    return notes;
}

Answer withSentences(Answer answer, const std::vector<std::string>& sentences) {
    std::string text;
    for (const std::string& sentence : sentences) {
        text += sentence + "\n\n";
    }
    answer.text = text + answer.text;
    return answer;
}

Reading withoutLooseJoints(const Reading& reading) {
    const Truss& truss = reading.truss;
    std::vector<bool> held(truss.joints.size());
    for (const Member& member : truss.members) {
        held[member.a.at()] = held[member.b.at()] = true;
    }
    for (const Support& support : truss.supports) {
        held[support.joint.at()] = held[support.joint.at()] || support.kind == SupportKind::Pin;
    }
    Things loose;
    for (std::size_t i = 0; i < held.size(); ++i) {
        if (!held[i]) {
            loose.joints.push_back(JointId{static_cast<int>(i)});
        }
    }
    Reading rest = reading;
    if (!truss.members.empty() && !loose.empty()) {
        removeThings(rest.truss, loose);
        rest.notes.push_back({IssueCode::Suspicious, "joints",
                              "the truss is a mechanism by joints that no member meets: what is "
                              "given is of the truss without them"});
    }
    return rest;
}

} // namespace gusset::cli
