#include "app/derived/derived.hpp"

#include "core/signs.hpp"
#include "exchange/links/link.hpp"
#include "phrases/messages.hpp"
#include "phrases/results/jobs.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"
#include "statics/solve/exact.hpp"

#include <algorithm>

namespace gusset {

Derived::Derived() = default;
Derived::Derived(Derived&&) noexcept = default;
Derived& Derived::operator=(Derived&&) noexcept = default;
Derived::~Derived() = default;

namespace {

bool hasSolution(const AppState& state, const Derived& derived) {
    return derived.revision == state.revision && derived.choice == state.choice;
}

// As fractions and roots, with a true minus sign.
std::string printedSurd(const Surd& force) {
    const std::string text = textOf(force); // ASCII
    return text[0] == '-' ? kMinus + text.substr(1) : text;
}

Job exactJob(const AppState& state, const std::shared_ptr<ExactShown>& shown) {
    shown->revision = state.revision;
    shown->choice = state.choice;
    const auto truss = std::make_shared<const Truss>(state.truss);
    Job job;
    job.add(stageOf(
        phrase::kJobExact, [truss, choice = state.choice] { return ExactTask(*truss, choice); },
        [truss, shown, book = state.book](const ExactTask& task) {
            for (const Surd& force : task.result().forces) {
                shown->forces.push_back(printedSurd(force));
            }
            shown->whyNot = inexactSentence({*book, *truss}, task.result().whyNot);
        }));
    return job;
}

// A refusal of forces is the only warning then; for a mechanism or a model with faults the reason
// is the first one.
std::string whyUnsolved(const Derived& derived) {
    if (derived.solution.solved) {
        return {};
    }
    return isRefused(derived.solution) ? derived.warnings.front() : derived.verdict.front();
}

} // namespace

void derive(const AppState& state, Derived& derived) {
    if (hasSolution(state, derived)) {
        return;
    }
    derived.solution = derived.solver.solve(state.truss, state.choice);
    derived.forces = forceRows({*state.book, state.truss}, derived.solution);
    derived.reactions = reactionRows(state.truss, derived.solution);
    derived.verdict = verdict({*state.book, state.truss}, derived.solution);
    derived.warnings = trustSentences({*state.book, state.truss}, derived.solution);
    derived.whyUnsolved = whyUnsolved(derived);
    derived.warningsOfWorking = workingSentences({*state.book, state.truss}, derived.solution);
    derived.movements = movementRows(state.truss, derived.solution);
    derived.stretches = stretchRows(state.truss, derived.solution);
    derived.movementLines = movementLines({*state.book, state.truss}, derived.solution);
    derived.revision = state.revision;
    derived.choice = state.choice;
}

bool isOf(const ExactShown& shown, const AppState& state) {
    return shown.revision == state.revision && shown.choice == state.choice;
}

bool deriveExact(const AppState& state, Derived& derived, Slice& slice) {
    derive(state, derived);
    if (derived.solution.status == Status::Invalid) {
        return false;
    }
    const auto isNow = [&](const ExactShown& shown) { return isOf(shown, state); };
    return bringUpToDate(slice, derived.jobs.exact, derived.exact, isNow,
                         [&](const auto& shown) { return exactJob(state, shown); });
}

bool deriveEnvelope(const AppState& state, Derived& derived, Slice& slice) {
    const auto isNow = [&](const EnvelopeShown& shown) { return isOf(shown, state); };
    return bringUpToDate(slice, derived.jobs.envelope, derived.envelope, isNow,
                         [&](const auto& shown) { return envelopeJob(state, shown); });
}

bool deriveChecks(const AppState& state, Derived& derived, Slice& slice) {
    derive(state, derived);
    const auto isNow = [&](const ChecksShown& shown) { return isOf(shown, state); };
    const auto begin = [&](const auto& shown) { return checksJob(state, derived.solution, shown); };
    if (bringUpToDate(slice, derived.jobs.checks, derived.checks, isNow, begin)) {
        return true;
    }
    checkPicked(state, derived.checks);
    return false;
}

bool deriveWorking(const AppState& state, Derived& derived, Slice& slice) {
    derive(state, derived);
    const auto isNow = [&](const ShownWorking& shown) { return isShown(state, shown); };
    const auto begin = [&](const auto& shown) {
        shown->serial = ++derived.jobs.workings;
        return workingJob(state, derived.solution, shown);
    };
    if (bringUpToDate(slice, derived.jobs.working, derived.working, isNow, begin)) {
        return true;
    }
    drawPolygon(state, derived.working);
    return false;
}

const std::string& newsOf(const Derived& derived) {
    return derived.whyUnsolved.empty() ? derived.verdict.front() : derived.whyUnsolved;
}

void deriveLink(const AppState& state, Derived& derived) {
    if (derived.linkRevision == state.revision && derived.linkLoads == state.choice) {
        return;
    }
    const Outcome<std::string> link = openableLink(state.committed, state.choice);
    derived.link = link ? link.value() : "";
    derived.linkFault =
        link ? ""
             : said(*state.book,
                    statement(phrase::kWhyNoLink, {{"fault", link.issues().front().says}}));
    derived.linkRevision = state.revision;
    derived.linkLoads = state.choice;
}

std::optional<int> shownStep(const AppState& state, const Derived& derived) {
    const int count = stepsOf(derived.working);
    if (!isShown(state, derived.working) || count == 0) {
        return std::nullopt;
    }
    return std::clamp(state.notebook.step, 0, count - 1);
}

std::optional<StepPlace> stepPlace(const AppState& state, const Derived& derived) {
    const std::optional<int> step = shownStep(state, derived);
    const int count = step ? stepsOf(derived.working) : 0;
    if (count < 2 || state.notebook.working == WorkingPage::Displacement) {
        return std::nullopt;
    }
    return StepPlace{*step, count};
}

void keepStepInRange(const AppState& state, const Derived& derived, Actions& actions) {
    const std::optional<int> shown = shownStep(state, derived);
    if (shown && *shown != state.notebook.step) {
        actions.push_back(Set{&NotebookState::step, *shown});
    }
}

} // namespace gusset
