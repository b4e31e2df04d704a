#include "statics/solution.hpp"

#include "core/tolerance.hpp"
#include "model/validate.hpp"
#include "statics/equilibrium.hpp"
#include "statics/mechanism.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

bool hasLoad(const std::vector<Vec2>& loads) {
    return std::any_of(loads.begin(), loads.end(), [](Vec2 load) { return load != Vec2{}; });
}

std::vector<Vec2> reactionsByJoint(const Structure& structure,
                                   const std::vector<double>& reactions) {
    std::vector<Vec2> sums(structure.joints.size());
    for (std::size_t i = 0; i < reactions.size(); ++i) {
        const Restraint& restraint = structure.restraints[i];
        Vec2& sum = sums[restraint.joint.at()];
        sum = sum + reactions[i] * restraint.along;
    }
    return sums;
}

void take(const Structure& structure, EquilibriumForces found, Solution& solution) {
    solution.solved = true;
    solution.largest = found.largest;
    solution.residual = found.residual;
    solution.jointReactions = reactionsByJoint(structure, found.reactions);
    solution.forces = std::move(found.forces);
    solution.reactions = std::move(found.reactions);
}

Status statusOf(const Counting& counting) {
    if (counting.mechanisms > 0)
        return Status::Mechanism;
    return counting.redundants > 0 ? Status::Indeterminate : Status::Determinate;
}

Issues faultsOf(const Truss& truss, const LoadChoice& choice) {
    Issues faults;
    const std::vector<std::string> cases = caseNames(truss);
    if (!choice.caseId.empty() &&
        std::find(cases.begin(), cases.end(), choice.caseId) == cases.end())
        faults.push_back(
            {IssueCode::UnknownName, "loads",
             "no load is in a case \"" + choice.caseId + "\"; name one that is there"});
    const auto isChosen = [&](const Combination& each) { return each.id == choice.combinationId; };
    if (!choice.combinationId.empty() &&
        std::none_of(truss.combinations.begin(), truss.combinations.end(), isChosen))
        faults.push_back(
            {IssueCode::UnknownName, "combinations",
             "there is no combination \"" + choice.combinationId + "\"; name one that is there"});
    return faults;
}

} // namespace

Solution solve(const Truss& truss, const LoadChoice& choice) {
    Solution solution;
    Findings findings = validate(truss);
    solution.notes = std::move(findings.notes);
    solution.errors =
        findings.errors.empty() ? faultsOf(truss, choice) : std::move(findings.errors);
    if (!solution.errors.empty())
        return solution;

    const Structure structure = structureOf(truss);
    const Equilibrium equilibrium = factorEquilibrium(structure);
    solution.counting = equilibrium.counting;
    solution.status = statusOf(solution.counting);
    solution.loads = jointLoads(truss, choice);
    if (solution.status == Status::Mechanism)
        solution.mechanisms = mechanismsOf(truss, structure, equilibrium, solution.loads);
    // A mechanism may happen to be in equilibrium under its loads; without any, that says nothing.
    const bool worthwhile = solution.status == Status::Determinate || hasLoad(solution.loads);
    if (solution.counting.redundants > 0 || !worthwhile)
        return solution;
    std::optional<EquilibriumForces> found = balance(structure, equilibrium, solution.loads);
    if (found)
        take(structure, std::move(*found), solution);
    return solution;
}

bool isZero(const Solution& solution, double force) {
    return std::abs(force) <= kZeroForce * solution.largest;
}

Sense senseOf(const Solution& solution, MemberId member) {
    const double force = solution.forces[member.at()];
    if (isZero(solution, force))
        return Sense::Zero;
    return force > 0 ? Sense::Tension : Sense::Compression;
}

} // namespace gusset
