#include "statics/influence_report.hpp"

#include <algorithm>

namespace gusset {
namespace {

// What hinders this effect although the truss is solved.
Issues faultsOfEffect(const Truss& truss, const PathAnalysis& analysis, const Effect& effect) {
    const auto hasSupport = [&](JointId joint) {
        return std::any_of(truss.supports.begin(), truss.supports.end(),
                           [&](const Support& support) { return support.joint == joint; });
    };
    if (effect.kind == EffectKind::Reaction && !hasSupport(effect.joint)) {
        return {{IssueCode::UnknownName, "reaction",
                 "joint " + truss.joints[effect.joint.at()].label +
                     " has no support: name one that has"}};
    }
    if (effect.kind == EffectKind::Displacement &&
        analysis.responses.front().displacements.empty()) {
        return {{IssueCode::Missing, "members",
                 "displacements need E and A of every member: give each a section with A and a "
                 "material with E"}};
    }
    return {};
}

MovingResult resultOf(const Truss& truss, const InfluenceLine& line, const MovingLoad& load) {
    MovingResult result{load.id, extremesOf(line, wheelsOf(truss, load)), {}};
    if (load.uniform) {
        result.uniform = extremesOf(truss, line, *load.uniform);
    }
    return result;
}

} // namespace

double ordinateScale(const Truss& truss, EffectKind kind) {
    if (kind != EffectKind::Displacement) {
        return 1;
    }
    return toNewton(truss.units.force) / toMetre(truss.units.displacement);
}

Outcome<InfluenceReport> influenceReport(const Truss& truss, const std::vector<JointId>& path,
                                         const Effect& effect) {
    const Outcome<PathAnalysis> analysis = analysePath(truss, path);
    if (!analysis) {
        return analysis.issues();
    }
    if (const Issues faults = faultsOfEffect(truss, analysis.value(), effect); !faults.empty()) {
        return faults;
    }
    InfluenceReport report;
    report.effect = effect;
    report.path = path;
    report.line = influenceLine(analysis.value(), effect);
    report.exact = exactOrdinates(truss, path, effect);
    report.assumed = analysis.value().assumed;
    for (const MovingLoad& load : truss.moving) {
        if (load.path == path) {
            report.moving.push_back(resultOf(truss, report.line, load));
        }
    }
    return report;
}

} // namespace gusset
