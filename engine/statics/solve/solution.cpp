#include "statics/solve/solution.hpp"

#include "core/tolerance.hpp"
#include "model/validate/validate.hpp"
#include "phrases/results/unsolved.hpp"
#include "statics/equilibrium/bar_properties.hpp"
#include "statics/solve/analysis.hpp"
#include "statics/solve/reliance.hpp"
#include "statics/solve/solver.hpp"
#include "statics/stability/mechanism.hpp"
#include "statics/stability/redundant.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gusset {

namespace {

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

void take(const Structure& structure, Response response, Solution& solution) {
    solution.solved = true;
    solution.largest = response.found.largest;
    solution.residual = response.found.residual;
    solution.trust = response.trust;
    solution.forces = std::move(response.found.forces);
    solution.reactions = std::move(response.found.reactions);
    solution.jointReactions = reactionsByJoint(structure, solution.reactions);
    solution.stresses.reserve(structure.bars.size());
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const double area = structure.bars[i].area;
        solution.stresses.push_back(area > 0 ? solution.forces[i] / area
                                             : std::numeric_limits<double>::quiet_NaN());
    }
    if (response.displacements.empty()) {
        return;
    }
    solution.displaced = true;
    solution.displacements = std::move(response.displacements);
    solution.elongations = elongationsOf(structure, solution.forces);
    solution.strainEnergy = strainEnergyOf(structure, solution.forces);
    const double off = solution.trust.error * solution.largest;
    solution.elongationErrors.reserve(structure.bars.size());
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        solution.elongationErrors.push_back(off * bar.length / bar.stiffness);
        solution.strainEnergyError +=
            std::abs(solution.forces[i]) * solution.elongationErrors.back();
    }
}

Issues unknownChoice(const Truss& truss, const LoadChoice& choice) {
    if (isThere(truss, choice)) {
        return {};
    }
    const std::string name = choiceName(choice);
    return {isOneCase(choice) ? Issue{IssueCode::UnknownName, "loads",
                                      statement(phrase::kNoLoadInCase, {{"case", name}})}
                              : Issue{IssueCode::UnknownName, "combinations",
                                      statement(phrase::kNoSuchCombination, {{"name", name}})}};
}

void readStructure(const Analysis& analysis, Solution& solution) {
    solution.counting = analysis.equilibrium.counting;
    solution.status = analysis.status;
    solution.redundants = redundantsOf(analysis.structure, analysis.equilibrium);
    if (analysis.status == Status::Mechanism) {
        solution.mechanisms =
            mechanismsOf(analysis.structure, analysis.equilibrium, solution.loads);
    }
    solution.barelyHeld = barelyHeldOf(analysis);
    solution.standsOut = standsOutOf(analysis);
    solution.assumed = analysis.assumed;
    solution.errors.insert(solution.errors.end(), analysis.faults.begin(), analysis.faults.end());
    solution.notes.insert(solution.notes.end(), analysis.notes.begin(), analysis.notes.end());
}

// The analysis may be an earlier one, to be reused.
Solution solveBy(Analysis& analysis, const Truss& truss, const LoadChoice& choice,
                 Findings findings) {
    Solution solution;
    solution.notes = std::move(findings.notes);
    solution.errors =
        findings.errors.empty() ? unknownChoice(truss, choice) : std::move(findings.errors);
    if (!solution.errors.empty()) {
        return solution;
    }

    // A single case is its loads alone: the truss's own strains act only when all cases act
    // together, or in a combination.
    Structure structure = structureOf(truss);
    if (isOneCase(choice)) {
        structure = withoutStrains(std::move(structure));
    }
    solution.errors = missingProperties(truss, choice);
    solution.loads = jointLoads(truss, structure, choice);
    solution.moments = bendingMoments(truss, structure, choice);
    analyseAgain(truss, std::move(structure), analysis);
    readStructure(analysis, solution);
    // A mechanism may happen to be in equilibrium under its loads; without loads this means
    // nothing.
    const bool worthwhile = analysis.solvable || hasLoad(solution.loads);
    if (!solution.errors.empty() || !worthwhile) {
        return solution;
    }
    std::optional<Response> response = respond(analysis, solution.loads);
    if (response) {
        take(analysis.structure, std::move(*response), solution);
    }
    return solution;
}

} // namespace

Solution solve(const Truss& truss, const LoadChoice& choice) {
    Analysis analysis;
    return solveBy(analysis, truss, choice, validate(truss));
}

Solution Solver::solve(const Truss& truss, const LoadChoice& choice) {
    return solveBy(analysis_, truss, choice, recheck(truss, checked_));
}

bool isZero(const Solution& solution, double force) {
    return std::abs(force) <= zeroShareOf(solution.trust) * solution.largest;
}

double movementBound(const Solution& solution) {
    return solution.trust.displacementError * largestComponent(solution.displacements);
}

bool losesDisplacements(const Solution& solution) {
    return solution.solved && !solution.displaced && !(solution.trust.displacementError <= kUsable);
}

Sense senseOf(const Solution& solution, MemberId member) {
    const double force = solution.forces[member.at()];
    if (isZero(solution, force)) {
        return Sense::Zero;
    }
    return force > 0 ? Sense::Tension : Sense::Compression;
}

} // namespace gusset
