#include "statics/moving/envelope.hpp"

#include "model/validate/findings.hpp"
#include "phrases/results/unsolved.hpp"
#include "statics/equilibrium/bar_properties.hpp"
#include "statics/solve/analysis.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace gusset {

namespace {

Issues whyNoEnvelope(const Truss& truss, const Analysis& analysis) {
    return whyUnanswered(truss, analysis, phrase::kMechanismNoEnvelope);
}

// As for a solution: a mechanism may be at rest under its loads, which means nothing without any.
std::optional<Response> respondTo(const Analysis& analysis, Responder& responder,
                                  const std::vector<Vec2>& loads) {
    return analysis.solvable || hasLoad(loads) ? responder.respond(loads) : std::nullopt;
}

constexpr std::size_t kNone = static_cast<std::size_t>(-1);

// The index of the choice that gives each extreme; the names are copied at the end.
struct Extremes {
    std::vector<std::size_t> tension;
    std::vector<std::size_t> compression;

    explicit Extremes(std::size_t members) : tension(members, kNone), compression(members, kNone) {}
};

void widen(const std::vector<double>& forces, std::size_t choice, Extremes& by,
           std::vector<MemberEnvelope>& envelope) {
    for (std::size_t i = 0; i < forces.size(); ++i) {
        if (forces[i] > envelope[i].tension.force) {
            envelope[i].tension.force = forces[i];
            by.tension[i] = choice;
        }
        if (forces[i] < envelope[i].compression.force) {
            envelope[i].compression.force = forces[i];
            by.compression[i] = choice;
        }
    }
}

void nameChoices(const std::vector<LoadChoice>& choices, const Extremes& by,
                 std::vector<MemberEnvelope>& envelope) {
    for (std::size_t i = 0; i < envelope.size(); ++i) {
        if (by.tension[i] != kNone) {
            envelope[i].tension.choice = choices[by.tension[i]];
        }
        if (by.compression[i] != kNone) {
            envelope[i].compression.choice = choices[by.compression[i]];
        }
    }
}

} // namespace

std::vector<LoadChoice> combinationChoices(const Truss& truss) {
    std::vector<LoadChoice> choices;
    for (const Combination& combination : truss.combinations) {
        choices.emplace_back(OneCombination{combination.id});
    }
    return choices;
}

std::vector<LoadChoice> caseChoices(const Truss& truss) {
    std::vector<LoadChoice> choices;
    for (const std::string& name : caseNames(truss)) {
        choices.emplace_back(OneCase{name});
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
    LoadFactors factors;
    std::optional<Structure> structure{};
    std::optional<Analysis> all{};
    std::optional<Analysis> alone{}; // without strains, for single cases; set if there are strains
    std::optional<Responder> allResponder{};
    std::optional<Responder> aloneResponder{};
    Envelope envelope{};
    Extremes by;
    std::size_t added = 0; // choices

    void analyseOnce() {
        structure = structureOf(truss);
        all = analyse(truss, *structure);
        allResponder.emplace(*all);
        if (hasStrains(*structure)) {
            alone = analyse(truss, withoutStrains(*structure));
            aloneResponder.emplace(*alone);
        }
        if (choices.empty() && !all->solvable) {
            faults = whyNoEnvelope(truss, *all);
        }
        envelope.members.resize(truss.members.size());
        const bool onlyLoads = !choices.empty() && isOneCase(choices.front());
        envelope.reliance = relianceOf(onlyLoads && alone ? *alone : *all);
    }
    void add(std::size_t choice) {
        const bool onlyLoads = isOneCase(choices[choice]);
        const Analysis& analysis = onlyLoads && alone ? *alone : *all;
        Responder& responder = onlyLoads && alone ? *aloneResponder : *allResponder;
        const std::optional<Response> response = respondTo(
            analysis, responder, jointLoads(truss, *structure, factors.under(choices[choice])));
        if (!response) {
            faults = whyNoEnvelope(truss, analysis);
            return;
        }
        include(envelope.reliance, *response);
        widen(response->found.forces, choice, by, envelope.members);
    }
    bool advance() {
        if (checked < choices.size()) {
            faults = missingProperties(truss, choices[checked++]);
        } else if (!all) {
            analyseOnce();
        } else if (added < choices.size()) {
            add(added++);
        }
        return !faults.empty() || (all && added == choices.size());
    }
};

EnvelopeTask::EnvelopeTask(const Truss& truss, std::vector<LoadChoice> choices)
    : state_(new State{.truss = truss,
                       .choices = std::move(choices),
                       .faults = errorsOf(truss),
                       .factors = LoadFactors(truss),
                       .by = Extremes(truss.members.size())}) {}

EnvelopeTask::~EnvelopeTask() = default;
EnvelopeTask::EnvelopeTask(EnvelopeTask&&) noexcept = default;
EnvelopeTask& EnvelopeTask::operator=(EnvelopeTask&&) noexcept = default;

bool EnvelopeTask::advance() { return !state_->faults.empty() || state_->advance(); }

Progress EnvelopeTask::progress() const { return {state_->added, state_->choices.size()}; }

Outcome<Envelope> EnvelopeTask::take() {
    if (!state_->faults.empty()) {
        return std::move(state_->faults);
    }
    nameChoices(state_->choices, state_->by, state_->envelope.members);
    return std::move(state_->envelope);
}

Outcome<Envelope> envelopeOf(const Truss& truss, const std::vector<LoadChoice>& choices) {
    EnvelopeTask task(truss, choices);
    return runToEnd(task).take();
}

} // namespace gusset
