#include "cli/check_command.hpp"

#include "cli/names.hpp"
#include "cli/verdicts.hpp"
#include "exchange/results/json_checks.hpp"
#include "model/validate/validate.hpp"
#include "phrases/results/checks.hpp"
#include "report/derivation/check_working.hpp"
#include "report/paper/document.hpp"
#include "report/results/check_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"
#include "report/text/html.hpp"

namespace gusset::cli {

namespace {

struct Found {
    Exit exit = Exit::Answered;
    Issues faults;
    MemberChecks checks;
    CheckedLoads loads;
};

Found underChoice(const Writer& writer, const LoadChoice& choice) {
    const Solution solution = solve(writer.truss, choice);
    Found found;
    found.loads.choices = {choice};
    found.faults = solution.errors;
    found.exit = exitOf(solution);
    found.checks = checkMembers(writer.truss, solution, choice);
    if (isRefused(solution)) {
        found.checks.faults.push_back(
            {IssueCode::Unstable, {}, unsolvedSentence(writer, solution)});
    }
    found.faults =
        joined(joined(std::move(found.faults), notesOfMechanism(solution.status, solution.solved)),
               solution.notes);
    return found;
}

Found overAll(const Truss& truss) {
    Found found;
    found.loads = {envelopeChoices(truss), true};
    const Outcome<Envelope> envelope = envelopeOf(truss, found.loads.choices);
    if (!envelope) {
        found.exit = exitOf(envelope.issues());
        found.faults = envelope.issues();
        return found;
    }
    found.checks = checkMembers(truss, envelope.value(), found.loads.choices);
    found.faults = joined(notesOfMechanism(envelope.value().reliance.status, true), leftOut(truss));
    return found;
}

Answer sheet(const PhraseBook& book, const Arguments& arguments, const Truss& truss,
             const Found& found) {
    std::vector<std::string> warnings = trustSentences({book, truss}, found.checks.reliance);
    for (const Issue& fault : found.checks.faults) {
        warnings.push_back(faultSentence(book, fault));
    }
    if (arguments.has("--json")) {
        const CheckSentences sentences{cautionLines(book), warnings};
        return {found.exit, writeChecks(book, truss, found.checks, sentences, found.faults),
                found.faults};
    }
    if (arguments.has("--csv")) {
        return {found.exit, checksCsv({book, truss}, found.checks),
                joined(found.faults, notesOnForces(warnings))};
    }
    const std::string text =
        arguments.has("--html")
            ? documentAround({book, truss}, checksHtml({book, truss}, found.checks, found.loads))
            : checksText({book, truss}, found.checks, found.loads);
    return {found.exit, text, found.faults};
}

Answer oneMember(const PhraseBook& book, const Arguments& arguments, const Truss& truss,
                 const Found& found) {
    const Outcome<MemberId> member = memberNamed(truss, arguments.valueOf("--member"));
    if (!member) {
        return {Exit::BadInput, {}, member.issues()};
    }
    if (arguments.has("--json") || arguments.has("--csv")) {
        return {Exit::WrongUse,
                {},
                {{IssueCode::OutOfRange, "--member",
                  "is a working, which comes as --text or --html: ask for --members instead"}}};
    }
    if (found.checks.members.empty()) {
        return sheet(book, arguments, truss, found);
    }
    const std::vector<Passage> passages =
        checkPassages({book, truss}, found.checks.members[member.value().at()]);
    const std::vector<std::string> warnings = trustSentences({book, truss}, found.checks.reliance);
    if (arguments.has("--html")) {
        return {found.exit,
                documentAround({book, truss},
                               "<h2>" + escapeHtml(sayPlain(book, phrase::kCheckCaption)) +
                                   "</h2>\n" + paragraphsHtml(warnings) + passagesHtml(passages) +
                                   cautionHtml(book)),
                found.faults};
    }
    return withSentences({found.exit, passagesText(passages) + cautionText(book), found.faults},
                         warnings);
}

} // namespace

bool asksForMembers(const Arguments& arguments) {
    return arguments.has("--members") || arguments.has("--member");
}

Answer answerMembers(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Truss& truss = reading.truss;
    Found found =
        arguments.has("--worst") ? overAll(truss) : underChoice({book, truss}, choiceOf(arguments));
    found.faults.insert(found.faults.begin(), reading.notes.begin(), reading.notes.end());
    if (found.exit == Exit::BadInput) {
        return {found.exit, {}, found.faults};
    }
    return arguments.has("--member") ? oneMember(book, arguments, truss, found)
                                     : sheet(book, arguments, truss, found);
}

} // namespace gusset::cli
