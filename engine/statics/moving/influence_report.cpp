#include "statics/moving/influence_report.hpp"

#include "phrases/results/unsolved.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

// Why there is no such effect although the truss is solved.
Issues faultsOfEffect(const Truss& truss, const PathAnalysis& analysis, const Effect& effect) {
    const auto hasSupport = [&](JointId joint) {
        return std::any_of(truss.supports.begin(), truss.supports.end(),
                           [&](const Support& support) { return support.joint == joint; });
    };
    if (effect.kind == EffectKind::Reaction && !hasSupport(effect.joint)) {
        return {{IssueCode::UnknownName, "reaction",
                 statement(phrase::kNoSupportThere,
                           {{"joint", truss.joints[effect.joint.at()].label}})}};
    }
    if (effect.kind == EffectKind::Displacement && analysis.movesDoubtful) {
        return {{IssueCode::Unstable, "members", phrase::kDisplacementsDoubtful}};
    }
    if (effect.kind == EffectKind::Displacement &&
        analysis.responses.front().displacements.empty()) {
        return {{IssueCode::Missing, "members", phrase::kDisplacementsNeedStiffness}};
    }
    return {};
}

double errorOf(const Reliance& reliance, EffectKind kind) {
    return kind == EffectKind::Displacement ? displacementErrorOf(reliance)
                                            : forceErrorOf(reliance);
}

// `error`: bound for any ordinate.
MovingResult resultOf(const Truss& truss, const InfluenceLine& line, double error,
                      const MovingLoad& load) {
    const std::vector<Wheel> wheels = wheelsOf(truss, load);
    MovingResult result{load.id, extremesOf(line, wheels), {}, 0};
    double most = 0; // total load on the path, N
    for (const Wheel& wheel : wheels) {
        most += std::abs(wheel.force);
    }
    if (load.uniform) {
        result.uniform = extremesOf(truss, line, *load.uniform);
        most += std::abs(load.uniform->perLength) * toNewton(truss.units.force) /
                toMetre(truss.units.length) * line.at.back();
    }
    result.error = error * most;
    return result;
}

} // namespace

double ordinateScale(const Truss& truss, EffectKind kind) {
    if (kind != EffectKind::Displacement) {
        return 1;
    }
    return toNewton(truss.units.force) / toMetre(truss.units.displacement);
}

Trust trustOf(const InfluenceReport& report) {
    double largest = 0;
    for (const double ordinate : report.line.ordinates) {
        largest = std::max(largest, std::abs(ordinate));
    }
    Trust trust = report.reliance.trust;
    trust.error = largest > 0 ? report.error / largest : 0;
    return trust;
}

Outcome<InfluenceReport> influenceReport(const Truss& truss, const std::vector<JointId>& path,
                                         const Effect& effect) {
    const Outcome<PathAnalysis> analysis = analysePath(truss, path);
    if (!analysis) {
        return analysis.issues();
    }
    Outcome<InfluenceReport> found = influenceReport(truss, analysis.value(), effect);
    if (!found) {
        return found;
    }
    InfluenceReport report = std::move(found).value();
    report.exact = exactOrdinates(truss, path, effect);
    return report;
}

Outcome<InfluenceReport> influenceReport(const Truss& truss, const PathAnalysis& analysis,
                                         const Effect& effect) {
    if (const Issues faults = faultsOfEffect(truss, analysis, effect); !faults.empty()) {
        return faults;
    }
    InfluenceReport report;
    report.effect = effect;
    report.path = analysis.path;
    report.line = influenceLine(analysis, effect);
    report.reliance = analysis.reliance;
    report.error = errorOf(analysis.reliance, effect.kind);
    for (const MovingLoad& load : truss.moving) {
        if (load.path == analysis.path) {
            report.moving.push_back(resultOf(truss, report.line, report.error, load));
        }
    }
    return report;
}

bool MembersUnderTask::advance() {
    if (results_.size() < truss_.members.size()) {
        Effect effect;
        effect.member = MemberId{static_cast<int>(results_.size())};
        results_.push_back(resultOf(truss_, influenceLine(analysis_, effect),
                                    forceErrorOf(analysis_.reliance), load_));
    }
    return results_.size() == truss_.members.size();
}

Progress MembersUnderTask::progress() const { return {results_.size(), truss_.members.size()}; }

std::vector<MovingResult> membersUnder(const Truss& truss, const PathAnalysis& analysis,
                                       const MovingLoad& load) {
    MembersUnderTask task(truss, analysis, load);
    return runToEnd(task).take();
}

} // namespace gusset
