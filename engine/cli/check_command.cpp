#include "cli/check_command.hpp"

#include "cli/names.hpp"
#include "cli/verdicts.hpp"
#include "exchange/json_checks.hpp"
#include "model/validate.hpp"
#include "report/check_text.hpp"
#include "report/check_working.hpp"

namespace gusset::cli {

namespace {

struct Found {
    Exit exit = Exit::Answered;
    Issues faults;
    MemberChecks checks;
    CheckedLoads loads;
};

Found underChoice(const Truss& truss, const LoadChoice& choice) {
    const Solution solution = solve(truss, choice);
    Found found;
    found.loads.choices = {choice};
    found.faults = solution.errors;
    found.exit = exitOf(solution);
    found.checks = checkMembers(truss, solution, choice);
    for (const Issues& notes :
         {notesOfMechanism(solution.status, solution.solved), solution.notes}) {
        found.faults.insert(found.faults.end(), notes.begin(), notes.end());
    }
    return found;
}

Found overAll(const Truss& truss) {
    Found found;
    found.loads = {envelopeChoices(truss), true};
    const Outcome<std::vector<MemberEnvelope>> envelope = envelopeOf(truss, found.loads.choices);
    if (!envelope) {
        found.exit = exitOf(envelope.issues());
        found.faults = envelope.issues();
        return found;
    }
    found.checks = checkMembers(truss, envelope.value(), found.loads.choices);
    found.faults = notesOfMechanism(truss, found.loads.choices);
    for (Issue& note : leftOut(truss)) {
        found.faults.push_back(std::move(note));
    }
    return found;
}

std::string sheet(const PhraseBook& book, const Arguments& arguments, const Truss& truss,
                  const Found& found) {
    if (arguments.has("--json")) {
        return writeChecks(truss, found.checks, cautionLines(book), found.faults);
    }
    if (arguments.has("--csv")) {
        return checksCsv(book, truss, found.checks);
    }
    return arguments.has("--html") ? checksHtml(book, truss, found.checks, found.loads)
                                   : checksText(book, truss, found.checks, found.loads);
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
        return {found.exit, sheet(book, arguments, truss, found), found.faults};
    }
    const std::vector<Passage> passages =
        checkPassages(book, truss, found.checks.members[member.value().at()]);
    return {found.exit, arguments.has("--html") ? passagesHtml(passages) : passagesText(passages),
            found.faults};
}

} // namespace

bool asksForMembers(const Arguments& arguments) {
    return arguments.has("--members") || arguments.has("--member");
}

Answer answerMembers(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Truss& truss = reading.truss;
    Found found =
        arguments.has("--worst")
            ? overAll(truss)
            : underChoice(truss, {arguments.valueOf("--case"), arguments.valueOf("--combination")});
    found.faults.insert(found.faults.begin(), reading.notes.begin(), reading.notes.end());
    if (found.exit == Exit::BadInput) {
        return {found.exit, {}, found.faults};
    }
    return arguments.has("--member")
               ? oneMember(book, arguments, truss, found)
               : Answer{found.exit, sheet(book, arguments, truss, found), found.faults};
}

} // namespace gusset::cli
