#include "statics/equilibrium/equilibrium.hpp"

#include "core/index.hpp"
#include "core/tolerance.hpp"
#include "statics/equilibrium/free_body.hpp"
#include "statics/matrix/elimination.hpp"
#include "statics/matrix/lanes.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

void put(std::vector<MatrixEntry<double>>& entries, int joint, int column, Vec2 value) {
    entries.push_back({2 * joint, column, value.x});
    entries.push_back({2 * joint + 1, column, value.y});
}

Counting countingOf(const Structure& structure, const Factors<double>& factors) {
    Counting counting;
    counting.joints = toInt(structure.joints.size());
    counting.members = toInt(structure.bars.size());
    counting.reactions = toInt(structure.restraints.size());
    counting.rank = toInt(factors.steps.size());
    counting.mechanisms = 2 * counting.joints - counting.rank;
    counting.redundants = counting.members + counting.reactions - counting.rank;
    if (counting.redundants > 0) {
        const int rankOfMembers = 2 * counting.joints - motionsWithoutSupports(structure, factors);
        counting.internal = counting.members - rankOfMembers;
    }
    counting.external = counting.redundants - counting.internal;
    return counting;
}

// Adds the forces that balance `loads`, and returns how much of them a mechanism leaves unbalanced.
double addBalance(const Equilibrium& equilibrium, const std::vector<Vec2>& loads,
                  EquilibriumForces& sum) {
    std::vector<double> right(equilibrium.factors.rows);
    for (std::size_t i = 0; i < loads.size(); ++i) {
        right[2 * i] = -loads[i].x;
        right[2 * i + 1] = -loads[i].y;
    }
    const std::vector<double> found = solveReduced(equilibrium.factors, right);
    const std::size_t bars = sum.forces.size();
    for (std::size_t i = 0; i < bars; ++i) {
        sum.forces[i] += found[i];
    }
    for (std::size_t i = bars; i < found.size(); ++i) {
        sum.reactions[i - bars] += found[i];
    }
    double unbalanced = 0;
    for (int row : equilibrium.factors.dependentRows) {
        unbalanced = std::max(unbalanced, std::abs(right[static_cast<std::size_t>(row)]));
    }
    return unbalanced;
}

// One step of iterative refinement if the last digits are lost: it recovers what elimination lost.
void refine(const Structure& structure, const Equilibrium& equilibrium,
            const std::vector<Vec2>& loads, EquilibriumForces& result) {
    const std::vector<Vec2> lack = lackOfEquilibrium(structure, loads, result);
    const double largest = largestComponent(lack);
    result.residual = result.largest > 0 ? largest / result.largest : 0;
    if (result.residual > kCancelled) {
        (void)addBalance(equilibrium, lack, result);
        result.residual = residualOf(structure, loads, result);
    }
}

EquilibriumForces forcesOf(const Structure& structure, const std::vector<Lanes>& found,
                           std::size_t lane) {
    EquilibriumForces forces;
    forces.forces.reserve(structure.bars.size());
    forces.reactions.reserve(structure.restraints.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        (i < structure.bars.size() ? forces.forces : forces.reactions).push_back(found[i].at[lane]);
    }
    return forces;
}

} // namespace

SparseMatrix<double> equilibriumMatrix(const Structure& structure) {
    SparseMatrix<double> matrix;
    matrix.rows = 2 * structure.joints.size();
    matrix.columns = structure.bars.size() + structure.restraints.size();
    matrix.entries.reserve(4 * structure.bars.size() + 2 * structure.restraints.size());
    int column = 0;
    for (const Bar& bar : structure.bars) {
        put(matrix.entries, bar.a, column, bar.along);
        put(matrix.entries, bar.b, column++, -bar.along);
    }
    for (const Restraint& restraint : structure.restraints) {
        put(matrix.entries, restraint.joint.index, column++, restraint.along);
    }
    return matrix;
}

Equilibrium factorEquilibrium(const Structure& structure) {
    Equilibrium result;
    result.factors = eliminate(equilibriumMatrix(structure));
    result.counting = countingOf(structure, result.factors);
    return result;
}

void factorAgain(const Structure& structure, Refactoring& plan, Equilibrium& equilibrium) {
    const SparseMatrix<double> matrix = equilibriumMatrix(structure);
    Factors<double>& factors = equilibrium.factors;
    bool kept = factors.steps.size() == factors.rows;
    if (kept && plan.multiplesOf.empty()) {
        plan = planRefactoring(matrix, factors);
    }
    kept = kept && refactor(plan, matrix, factors);
    if (!kept) {
        plan = {};
        factors = eliminate(matrix);
    }
    equilibrium.counting = countingOf(structure, factors);
}

std::optional<EquilibriumForces> balance(const Structure& structure, const Equilibrium& equilibrium,
                                         const std::vector<Vec2>& loads) {
    EquilibriumForces result;
    result.forces.resize(structure.bars.size());
    result.reactions.resize(structure.restraints.size());
    const double unbalanced = addBalance(equilibrium, loads, result);
    result.largest = largestOf(loads, result);
    if (unbalanced > kResidual * result.largest) {
        return std::nullopt;
    }
    refine(structure, equilibrium, loads, result);
    return result;
}

std::vector<EquilibriumForces> balanceUnitLoads(const Structure& structure,
                                                const Equilibrium& equilibrium,
                                                const std::vector<JointId>& joints) {
    std::vector<EquilibriumForces> results;
    results.reserve(joints.size());
    std::vector<Vec2> loads(structure.joints.size());
    for (std::size_t first = 0; first < joints.size(); first += kLanes) {
        const std::size_t count = std::min(kLanes, joints.size() - first);
        std::vector<Lanes> right(equilibrium.factors.rows);
        for (std::size_t lane = 0; lane < count; ++lane) {
            right[2 * joints[first + lane].at() + 1].at[lane] = 1;
        }
        const std::vector<Lanes> found = solveReduced(equilibrium.factors, right);
        for (std::size_t lane = 0; lane < count; ++lane) {
            Vec2& load = loads[joints[first + lane].at()];
            load = {0, -1};
            results.push_back(forcesOf(structure, found, lane));
            results.back().largest = largestOf(loads, results.back());
            refine(structure, equilibrium, loads, results.back());
            load = {};
        }
    }
    return results;
}

double residualOf(const Structure& structure, const std::vector<Vec2>& loads,
                  const EquilibriumForces& found) {
    const double lack = largestComponent(lackOfEquilibrium(structure, loads, found));
    return found.largest > 0 ? lack / found.largest : 0;
}

double largestOf(const std::vector<Vec2>& loads, const EquilibriumForces& found) {
    double largest = largestComponent(loads);
    for (double force : found.forces) {
        largest = std::max(largest, std::abs(force));
    }
    for (double reaction : found.reactions) {
        largest = std::max(largest, std::abs(reaction));
    }
    return largest;
}

std::vector<Vec2> lackOfEquilibrium(const Structure& structure, const std::vector<Vec2>& loads,
                                    const EquilibriumForces& found) {
    std::vector<Vec2> lack = loads;
    const auto add = [&](int joint, Vec2 force) {
        Vec2& sum = lack[static_cast<std::size_t>(joint)];
        sum = sum + force;
    };
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        add(bar.a, found.forces[i] * bar.along);
        add(bar.b, -(found.forces[i] * bar.along));
    }
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        add(structure.restraints[i].joint.index,
            found.reactions[i] * structure.restraints[i].along);
    }
    return lack;
}

} // namespace gusset
