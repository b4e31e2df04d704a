#include "statics/envelope.hpp"

#include "model/findings.hpp"
#include "statics/analysis.hpp"
#include "statics/bar_properties.hpp"

#include <optional>
#include <utility>

namespace gusset {

namespace {

Issues whyNot(const Analysis& analysis) {
    if (!analysis.faults.empty()) {
        return analysis.faults;
    }
    return {{IssueCode::OutOfRange, "members",
             "the truss is a mechanism: it has no envelope before it is stable"}};
}

void widen(const std::vector<double>& forces, const LoadChoice& choice,
           std::vector<MemberEnvelope>& envelope) {
    for (std::size_t i = 0; i < forces.size(); ++i) {
        if (forces[i] > envelope[i].tension.force) {
            envelope[i].tension = {forces[i], choice};
        }
        if (forces[i] < envelope[i].compression.force) {
            envelope[i].compression = {forces[i], choice};
        }
    }
}

} // namespace

std::vector<LoadChoice> combinationChoices(const Truss& truss) {
    std::vector<LoadChoice> choices;
    for (const Combination& combination : truss.combinations) {
        choices.push_back({"", combination.id});
    }
    return choices;
}

std::vector<LoadChoice> caseChoices(const Truss& truss) {
    std::vector<LoadChoice> choices;
    for (const std::string& name : caseNames(truss)) {
        choices.push_back({name, ""});
    }
    return choices;
}

std::vector<LoadChoice> envelopeChoices(const Truss& truss) {
    return truss.combinations.empty() ? caseChoices(truss) : combinationChoices(truss);
}

struct EnvelopeTask::State {
    const Truss& truss;
    std::vector<LoadChoice> choices;
    Issues faults{};
    std::size_t checked = 0; // choices
    std::optional<Structure> structure{};
    std::optional<Analysis> all{};
    std::optional<Analysis> alone{}; // of the loads without strains, where there are some
    std::vector<MemberEnvelope> envelope{};
    std::size_t added = 0; // choices

    void analyseOnce() {
        structure = structureOf(truss);
        all = analyse(truss, *structure);
        if (hasStrains(*structure)) {
            alone = analyse(truss, withoutStrains(*structure));
        }
        envelope.resize(truss.members.size());
    }
    void add(const LoadChoice& choice) {
        const Analysis& analysis = !choice.caseId.empty() && alone ? *alone : *all;
        if (!analysis.solvable) {
            faults = whyNot(analysis);
            return;
        }
        const std::vector<Vec2> loads = jointLoads(truss, *structure, choice);
        widen(respond(analysis, loads)->found.forces, choice, envelope);
    }
    bool advance() {
        if (checked < choices.size()) {
            faults = missingProperties(truss, choices[checked++]);
        } else if (!all) {
            analyseOnce();
        } else if (added < choices.size()) {
            add(choices[added++]);
        }
        return !faults.empty() || (all && added == choices.size());
    }
};

EnvelopeTask::EnvelopeTask(const Truss& truss, std::vector<LoadChoice> choices)
    : state_(new State{truss, std::move(choices), errorsOf(truss)}) {}

EnvelopeTask::~EnvelopeTask() = default;
EnvelopeTask::EnvelopeTask(EnvelopeTask&&) noexcept = default;
EnvelopeTask& EnvelopeTask::operator=(EnvelopeTask&&) noexcept = default;

bool EnvelopeTask::advance() { return !state_->faults.empty() || state_->advance(); }

Progress EnvelopeTask::progress() const { return {state_->added, state_->choices.size()}; }

Outcome<std::vector<MemberEnvelope>> EnvelopeTask::take() {
    if (!state_->faults.empty()) {
        return std::move(state_->faults);
    }
    return std::move(state_->envelope);
}

Outcome<std::vector<MemberEnvelope>> envelopeOf(const Truss& truss,
                                                const std::vector<LoadChoice>& choices) {
    EnvelopeTask task(truss, choices);
    return runToEnd(task).take();
}

} // namespace gusset
