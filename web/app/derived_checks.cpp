#include "app/derived_checks.hpp"

#include "report/check_working.hpp"

namespace gusset {

namespace {

bool sameLoads(const LoadChoice& one, const LoadChoice& other) {
    return one.caseId == other.caseId && one.combinationId == other.combinationId;
}

MemberChecks worstOf(const Truss& truss, const std::vector<LoadChoice>& choices) {
    const Outcome<std::vector<MemberEnvelope>> envelope = envelopeOf(truss, choices);
    return envelope ? checkMembers(truss, envelope.value(), choices) : MemberChecks{};
}

void deriveSheet(const AppState& state, const Solution& solution, ChecksShown& shown) {
    const Truss& truss = state.truss;
    const PhraseBook& book = *state.book;
    const std::vector<LoadChoice> choices =
        solution.solved ? envelopeChoices(truss) : std::vector<LoadChoice>{};
    shown = {};
    shown.revision = state.revision;
    shown.choice = state.choice;
    shown.ofAll = state.notebook.checksOfAll;
    shown.hasChoice = choices.size() > 1;
    if (shown.hasChoice && shown.ofAll) {
        shown.loads = {choices, true};
        shown.checks = worstOf(truss, choices);
    } else {
        shown.loads.choices = {state.choice};
        shown.checks = checkMembers(truss, solution, state.choice);
    }
    shown.rows = checkRows(book, truss, shown.checks);
    shown.lines = checkLines(book, truss, shown.checks, shown.loads);
    shown.caution = cautionLines(book);
}

void deriveWorkedMember(const AppState& state, ChecksShown& shown) {
    const std::vector<MemberId>& picked = state.selection.members;
    const bool one = picked.size() == 1 && picked.front().at() < shown.checks.members.size();
    const MemberId member = one ? picked.front() : MemberId{};
    if (shown.workingRevision == shown.revision && shown.worked == member) {
        return;
    }
    shown.workingRevision = shown.revision;
    shown.worked = member;
    shown.working = one ? checkPassages(*state.book, state.truss, shown.checks.members[member.at()])
                        : std::vector<Passage>{};
}

} // namespace

bool isOf(const ChecksShown& shown, const AppState& state) {
    return shown.revision == state.revision && sameLoads(shown.choice, state.choice) &&
           shown.ofAll == state.notebook.checksOfAll;
}

void deriveChecks(const AppState& state, const Solution& solution, ChecksShown& shown) {
    if (!isOf(shown, state)) {
        deriveSheet(state, solution, shown);
    }
    deriveWorkedMember(state, shown);
}

bool showsChecks(const AppState& state) {
    const NotebookState& notebook = state.notebook;
    return notebook.open && notebook.tab == NotebookTab::Forces &&
           notebook.results == ResultPage::Checks;
}

bool showsUse(const AppState& state) {
    return state.view.showForces && state.view.memberFigure == MemberFigure::Use;
}

} // namespace gusset
