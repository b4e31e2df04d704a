// A responder's responses to unit loads, judged together; see analysis.hpp.
#include "statics/solve/analysis.hpp"

#include "core/tolerance.hpp"
#include "statics/equilibrium/judge.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {

namespace {

bool areIdle(const UnitResponses& units) {
    const double zero = zeroShareOf(units.trust) * units.largest;
    return std::all_of(units.each.begin(), units.each.end(), [&](const Response& response) {
        const std::vector<double>& forces = response.found.forces;
        return std::all_of(forces.begin(), forces.end(),
                           [&](double force) { return std::abs(force) <= zero; });
    });
}

// As for a single response: displacements that are only rounding error are set to zero if no bar
// changes length; otherwise those with fewer than three figures left are not given.
void dropDoubtful(UnitResponses& units) {
    double& error = units.trust.displacementError;
    if (error <= kUsable) {
        return;
    }
    const bool areNone = isRounding(error) && areIdle(units);
    for (Response& response : units.each) {
        response.displacements.assign(areNone ? response.displacements.size() : 0, {});
    }
    units.farthest = error = 0;
}

} // namespace

std::optional<UnitResponses> Responder::unitsByStiffness(const std::vector<JointId>& joints) {
    const Structure& structure = analysis_.structure;
    if (doublesMayDo()) {
        UnitResponses units = gusset::respondToUnits(structure, analysis_.pattern,
                                                     analysis_.stiffness, joints, judged());
        if (isTrusted(units.trust, units.residual)) {
            return units;
        }
    }
    const WideStiffness* const stiffness = wide();
    if (!stiffness) {
        return std::nullopt;
    }
    return gusset::respondToUnits(structure, analysis_.pattern, *stiffness, joints, judged());
}

std::optional<UnitResponses>
Responder::unitsByEquilibrium(const std::vector<JointId>& joints) const {
    const Structure& structure = analysis_.structure;
    const Equilibrium& equilibrium = analysis_.equilibrium;
    UnitResponses units;
    units.each.resize(joints.size());
    std::vector<EquilibriumForces> found = balanceUnitLoads(structure, equilibrium, joints);
    std::vector<double> changes;
    EquilibriumForces most;
    std::vector<Vec2> farthest;
    std::vector<Vec2> loads(structure.joints.size());
    for (std::size_t i = 0; i < joints.size(); ++i) {
        Response& response = units.each[i];
        response.found = std::move(found[i]);
        loads[joints[i].at()] = {0, -1};
        widen(changes, changesOf(structure, loads, response.found));
        loads[joints[i].at()] = {};
        widen(most, response.found);
        if (analysis_.displaces) {
            response.displacements = displacementsOf(
                structure, equilibrium, elongationsOf(structure, response.found.forces));
            widen(farthest, response.displacements);
        }
    }
    units.largest = most.largest;
    units.residual = most.residual;
    units.farthest = largestComponent(farthest);
    units.trust = judgeForces(structure, equilibrium, changes, most);
    if (analysis_.displaces) {
        judgeDisplacementsOf(changes, most, farthest, units.trust);
    }
    return units;
}

std::optional<UnitResponses> Responder::respondToUnits(const std::vector<JointId>& joints) {
    if (!analysis_.solvable || joints.empty()) {
        return std::nullopt;
    }
    std::optional<UnitResponses> units = analysis_.status == Status::Indeterminate
                                             ? unitsByStiffness(joints)
                                             : unitsByEquilibrium(joints);
    if (!units || !isUsable(units->trust, units->residual)) {
        return std::nullopt;
    }
    if (!analysis_.displaces) {
        for (Response& response : units->each) {
            response.displacements.clear();
        }
        units->farthest = 0;
    }
    dropDoubtful(*units);
    return units;
}

} // namespace gusset
