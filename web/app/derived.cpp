#include "app/derived.hpp"

#include "app/slices.hpp"
#include "exchange/link.hpp"
#include "report/solution_text.hpp"

#include <algorithm>

namespace gusset {

Derived::Derived() = default;
Derived::Derived(Derived&&) noexcept = default;
Derived& Derived::operator=(Derived&&) noexcept = default;
Derived::~Derived() = default;

namespace {

bool sameChoice(const LoadChoice& one, const LoadChoice& other) {
    return one.caseId == other.caseId && one.combinationId == other.combinationId;
}

bool hasSolution(const AppState& state, const Derived& derived) {
    return derived.revision == state.revision && sameChoice(derived.choice, state.choice);
}

} // namespace

void derive(const AppState& state, Derived& derived) {
    if (hasSolution(state, derived)) {
        return;
    }
    derived.solution = derived.solver.solve(state.truss, state.choice);
    derived.forces = forceRows(*state.book, state.truss, derived.solution);
    derived.reactions = reactionRows(state.truss, derived.solution);
    derived.verdict = verdict(*state.book, state.truss, derived.solution);
    derived.movements = movementRows(state.truss, derived.solution);
    derived.stretches = stretchRows(state.truss, derived.solution);
    derived.movementLines = movementLines(*state.book, state.truss, derived.solution);
    derived.exactTask.reset();
    derived.exactDone = false;
    derived.exactForces.clear();
    derived.exactWhyNot.clear();
    derived.revision = state.revision;
    derived.choice = state.choice;
}

bool deriveExact(const AppState& state, Derived& derived, std::chrono::microseconds budget) {
    derive(state, derived);
    if (derived.exactDone || derived.solution.status == Status::Invalid) {
        return false;
    }
    if (!derived.exactTask) {
        derived.exactTask.emplace(state.truss, state.choice);
    }
    if (!advanceUntil(after(budget), *derived.exactTask)) {
        return true;
    }
    const ExactSolution& exact = derived.exactTask->result();
    for (const Surd& force : exact.forces) {
        const std::string text = textOf(force); // ASCII; read by people it has a true minus
        derived.exactForces.push_back(text[0] == '-' ? "\u2212" + text.substr(1) : text);
    }
    derived.exactWhyNot = inexactSentence(*state.book, state.truss, exact.whyNot);
    derived.exactTask.reset();
    derived.exactDone = true;
    return false;
}

void deriveWorking(const AppState& state, Derived& derived) {
    derive(state, derived);
    showWorking(state, derived.solution, derived.working);
}

void deriveLink(const AppState& state, Derived& derived) {
    if (derived.linkRevision == state.revision && sameChoice(derived.linkLoads, state.choice)) {
        return;
    }
    const Outcome<std::string> link = openableLink(state.committed, state.choice);
    derived.link = link ? link.value() : "";
    derived.linkFault = link ? "" : "The link " + link.issues().front().says + ".";
    derived.linkRevision = state.revision;
    derived.linkLoads = state.choice;
}

int shownStep(const AppState& state, const Derived& derived) {
    const int count = stepsOf(derived.working);
    if (!isShown(state, derived.working) || count == 0) {
        return -1;
    }
    return std::clamp(state.notebook.step, 0, count - 1);
}

void keepStepInRange(const AppState& state, const Derived& derived, Actions& actions) {
    const int shown = shownStep(state, derived);
    if (shown >= 0 && shown != state.notebook.step) {
        NotebookState notebook = state.notebook;
        notebook.step = shown;
        actions.push_back(SetNotebook{notebook});
    }
}

} // namespace gusset
