#include "statics/envelope.hpp"

#include "model/findings.hpp"
#include "statics/analysis.hpp"
#include "statics/bar_properties.hpp"

#include <algorithm>

namespace gusset {

namespace {

Issues faultsOf(const Truss& truss, const std::vector<LoadChoice>& choices) {
    Issues faults = errorsOf(truss);
    for (const LoadChoice& choice : choices) {
        if (!faults.empty()) {
            break;
        }
        faults = missingProperties(truss, choice);
    }
    return faults;
}

Issues whyNot(const Analysis& analysis) {
    if (!analysis.faults.empty()) {
        return analysis.faults;
    }
    const char* says =
        analysis.status == Status::Mechanism
            ? "the truss is a mechanism: it has no envelope before it is stable"
            : "the truss is too close to a mechanism, or its stiffnesses differ too much, for its "
              "forces to be computed";
    return {{IssueCode::Unstable, "members", says}};
}

// As of a solution: a mechanism may be at rest under its loads, which says nothing without any.
std::optional<Response> respondTo(const Analysis& analysis, const std::vector<Vec2>& loads) {
    const bool isLoaded =
        std::any_of(loads.begin(), loads.end(), [](Vec2 load) { return load != Vec2{}; });
    return analysis.solvable || isLoaded ? respond(analysis, loads) : std::nullopt;
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

Outcome<std::vector<MemberEnvelope>> envelopeOf(const Truss& truss,
                                                const std::vector<LoadChoice>& choices) {
    if (const Issues faults = faultsOf(truss, choices); !faults.empty()) {
        return faults;
    }
    const Structure structure = structureOf(truss);
    const Analysis all = analyse(truss, structure);
    const Analysis loadsAlone =
        hasStrains(structure) ? analyse(truss, withoutStrains(structure)) : all;
    std::vector<MemberEnvelope> envelope(truss.members.size());
    for (const LoadChoice& choice : choices) {
        const Analysis& analysis = choice.caseId.empty() ? all : loadsAlone;
        const std::optional<Response> response =
            respondTo(analysis, jointLoads(truss, structure, choice));
        if (!response) {
            return whyNot(analysis);
        }
        widen(response->found.forces, choice, envelope);
    }
    if (choices.empty() && !all.solvable) {
        return whyNot(all);
    }
    return envelope;
}

} // namespace gusset
