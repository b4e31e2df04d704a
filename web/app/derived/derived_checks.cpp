#include "app/derived/derived_checks.hpp"

#include "phrases/results/jobs.hpp"
#include "report/derivation/check_working.hpp"

#include <utility>

namespace gusset {

namespace {

// The job's own copies: edits go on meanwhile.
struct CheckedUnder {
    Truss truss;
    const PhraseBook& book;
};

void writeSheet(const CheckedUnder& of, ChecksShown& shown) {
    shown.rows = checkRows({of.book, of.truss}, shown.checks);
    shown.lines = checkLines({of.book, of.truss}, shown.checks, shown.loads);
    shown.warnings = checkWarnings({of.book, of.truss}, shown.checks);
    shown.caution = cautionLines(of.book);
}

} // namespace

bool isOf(const ChecksShown& shown, const AppState& state) {
    return shown.revision == state.revision && shown.choice == state.choice &&
           shown.ofAll == state.notebook.checksOfAll;
}

Job checksJob(const AppState& state, const Solution& solution,
              const std::shared_ptr<ChecksShown>& shown) {
    const auto of = std::make_shared<const CheckedUnder>(CheckedUnder{state.truss, *state.book});
    std::vector<LoadChoice> choices =
        solution.solved ? envelopeChoices(of->truss) : std::vector<LoadChoice>{};
    shown->revision = state.revision;
    shown->choice = state.choice;
    shown->ofAll = state.notebook.checksOfAll;
    shown->hasChoice = choices.size() > 1;
    Job job;
    if (shown->hasChoice && shown->ofAll) {
        shown->loads = {choices, true};
        job.add(stageOf(
            phrase::kJobLoads,
            [of, choices = std::move(choices)] { return WorstChecksTask(of->truss, choices); },
            [shown](WorstChecksTask& task) { shown->checks = task.take(); }));
    } else {
        shown->loads.choices = {state.choice};
        job.add(stageOf(phrase::kJobMembers, [of, shown, solution, choice = state.choice] {
            shown->checks = checkMembers(of->truss, solution, choice);
        }));
    }
    job.add(stageOf(phrase::kJobTable, [of, shown] { writeSheet(*of, *shown); }));
    return job;
}

void checkPicked(const AppState& state, ChecksShown& shown) {
    const std::vector<MemberId>& picked = state.selection.members;
    const bool one = picked.size() == 1 && picked.front().at() < shown.checks.members.size();
    const MemberId member = one ? picked.front() : MemberId{};
    if (shown.workingRevision == shown.revision && shown.worked == member) {
        return;
    }
    shown.workingRevision = shown.revision;
    shown.worked = member;
    shown.working =
        one ? checkPassages({*state.book, state.truss}, shown.checks.members[member.at()])
            : std::vector<Passage>{};
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
