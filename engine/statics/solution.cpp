#include "statics/solution.hpp"

#include "core/tolerance.hpp"
#include "model/validate.hpp"
#include "statics/bar_properties.hpp"
#include "statics/displacement.hpp"
#include "statics/equilibrium.hpp"
#include "statics/mechanism.hpp"
#include "statics/redundant.hpp"
#include "statics/stiffness.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

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
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const double area = structure.bars[i].area;
        solution.stresses.push_back(area > 0 ? solution.forces[i] / area
                                             : std::numeric_limits<double>::quiet_NaN());
    }
}

void takeDisplacements(const Structure& structure, std::vector<Vec2> displacements,
                       Solution& solution) {
    solution.displaced = true;
    solution.displacements = std::move(displacements);
    solution.elongations = elongationsOf(structure, solution.forces);
    solution.strainEnergy = strainEnergyOf(structure, solution.forces);
}

Status statusOf(const Counting& counting) {
    if (counting.mechanisms > 0) {
        return Status::Mechanism;
    }
    return counting.redundants > 0 ? Status::Indeterminate : Status::Determinate;
}

Issues faultsOf(const Truss& truss, const LoadChoice& choice) {
    Issues faults = missingProperties(truss);
    const std::vector<std::string> cases = caseNames(truss);
    if (!choice.caseId.empty() &&
        std::find(cases.begin(), cases.end(), choice.caseId) == cases.end()) {
        faults.push_back(
            {IssueCode::UnknownName, "loads",
             "no load is in a case \"" + choice.caseId + "\"; name one that is there"});
    }
    const auto isChosen = [&](const Combination& each) { return each.id == choice.combinationId; };
    if (!choice.combinationId.empty() &&
        std::none_of(truss.combinations.begin(), truss.combinations.end(), isChosen)) {
        faults.push_back(
            {IssueCode::UnknownName, "combinations",
             "there is no combination \"" + choice.combinationId + "\"; name one that is there"});
    }
    return faults;
}

std::size_t unknownStiffnesses(const Structure& structure) {
    return static_cast<std::size_t>(
        std::count_if(structure.bars.begin(), structure.bars.end(),
                      [](const Bar& bar) { return bar.stiffness <= 0; }));
}

void solveDeterminate(const Structure& structure, const Equilibrium& equilibrium,
                      Solution& solution) {
    std::optional<EquilibriumForces> found = balance(structure, equilibrium, solution.loads);
    if (!found) {
        return;
    }
    take(structure, std::move(*found), solution);
    if (solution.status != Status::Determinate || unknownStiffnesses(structure) > 0) {
        return;
    }
    const std::vector<double> elongations = elongationsOf(structure, solution.forces);
    takeDisplacements(structure, displacementsOf(structure, equilibrium, elongations), solution);
}

// Whether the members' stiffnesses are known, or may be taken as equal; says which.
bool mayAssumeStiffness(const Truss& truss, Structure& structure, Solution& solution) {
    const std::size_t unknown = unknownStiffnesses(structure);
    if (unknown == 0) {
        return true;
    }
    const auto first = std::find_if(structure.bars.begin(), structure.bars.end(),
                                    [](const Bar& bar) { return bar.stiffness <= 0; });
    const MemberId member{static_cast<int>(first - structure.bars.begin())};
    const std::string at = "members[" + std::to_string(member.index) + "].section";
    if (unknown < structure.bars.size()) {
        solution.notes.push_back({IssueCode::Missing, at,
                                  "the forces depend on E and A of every member, and member " +
                                      memberName(truss, member) +
                                      " has none: give it a section with A and a material with E"});
        return false;
    }
    if (hasStrains(structure)) {
        solution.notes.push_back(
            {IssueCode::Missing, at,
             "settlement, temperature and misfit cause forces that depend on E and A: give "
             "every member a section with A and a material with E"});
        return false;
    }
    for (Bar& bar : structure.bars) {
        bar.stiffness = 1;
    }
    solution.assumed.push_back(
        "E·A is taken to be the same for all members, as the model gives none: the forces "
        "are right only if that is so.");
    return true;
}

void noteConditioning(const Truss& truss, const Stiffness& stiffness, Solution& solution) {
    if (stiffness.weakest >= kWeak) {
        return;
    }
    solution.notes.push_back({IssueCode::Suspicious,
                              "joints[" + std::to_string(stiffness.weakestJoint.index) + "]",
                              "the truss is close to a mechanism at joint " +
                                  truss.joints[stiffness.weakestJoint.at()].label +
                                  ": small changes of its shape change the results much"});
}

void solveIndeterminate(const Truss& truss, Structure structure, std::vector<Hold> holds,
                        Solution& solution) {
    const bool known = unknownStiffnesses(structure) == 0;
    if (!mayAssumeStiffness(truss, structure, solution)) {
        return;
    }
    const JointPattern pattern = analysePattern(structure.joints.size(), structure.bars);
    const Stiffness stiffness = factorStiffness(structure, pattern, std::move(holds));
    noteConditioning(truss, stiffness, solution);
    if (stiffness.weakest <= 0) {
        return;
    }
    Response response = respond(structure, pattern, stiffness, solution.loads);
    take(structure, std::move(response.found), solution);
    if (known) {
        takeDisplacements(structure, std::move(response.displacements), solution);
    }
}

} // namespace

Solution solve(const Truss& truss, const LoadChoice& choice) {
    Solution solution;
    Findings findings = validate(truss);
    solution.notes = std::move(findings.notes);
    solution.errors =
        findings.errors.empty() ? faultsOf(truss, choice) : std::move(findings.errors);
    if (!solution.errors.empty()) {
        return solution;
    }

    Structure structure = structureOf(truss);
    // A case alone is its loads alone: the truss's own strains come in only where everything acts
    // together.
    if (!choice.caseId.empty()) {
        structure = withoutStrains(std::move(structure));
    }
    Outcome<std::vector<Hold>> holds = holdsOf(truss, structure);
    if (!holds) {
        solution.errors = holds.issues();
        return solution;
    }
    const Equilibrium equilibrium = factorEquilibrium(structure);
    solution.counting = equilibrium.counting;
    solution.status = statusOf(solution.counting);
    solution.loads = jointLoads(truss, structure, choice);
    solution.moments = bendingMoments(truss, structure, choice);
    solution.redundants = redundantsOf(structure, equilibrium);
    if (solution.status == Status::Indeterminate) {
        solveIndeterminate(truss, std::move(structure), std::move(holds).value(), solution);
        return solution;
    }
    // A mechanism may happen to be in equilibrium under its loads; without any, that says nothing.
    if (solution.status == Status::Mechanism) {
        solution.mechanisms = mechanismsOf(truss, structure, equilibrium, solution.loads);
        if (solution.counting.redundants > 0 || !hasLoad(solution.loads)) {
            return solution;
        }
    }
    solveDeterminate(structure, equilibrium, solution);
    return solution;
}

bool isZero(const Solution& solution, double force) {
    return std::abs(force) <= kZeroForce * solution.largest;
}

Sense senseOf(const Solution& solution, MemberId member) {
    const double force = solution.forces[member.at()];
    if (isZero(solution, force)) {
        return Sense::Zero;
    }
    return force > 0 ? Sense::Tension : Sense::Compression;
}

} // namespace gusset
