#include "statics/equilibrium.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

void put(std::vector<SparseLine<double>>& rows, int joint, int column, Vec2 value) {
    const std::size_t at = 2 * static_cast<std::size_t>(joint);
    if (value.x != 0) {
        rows[at].push_back({column, value.x});
    }
    if (value.y != 0) {
        rows[at + 1].push_back({column, value.y});
    }
}

int toInt(std::size_t count) { return static_cast<int>(count); }

int rankOfMembers(const Structure& structure) {
    Structure members = structure;
    members.restraints.clear();
    return toInt(eliminate(equilibriumRows(members), members.bars.size()).steps.size());
}

Counting countingOf(const Structure& structure, std::size_t rank) {
    Counting counting;
    counting.joints = toInt(structure.joints.size());
    counting.members = toInt(structure.bars.size());
    counting.reactions = toInt(structure.restraints.size());
    counting.rank = toInt(rank);
    counting.mechanisms = 2 * counting.joints - counting.rank;
    counting.redundants = counting.members + counting.reactions - counting.rank;
    if (counting.redundants > 0) {
        counting.internal = counting.members - rankOfMembers(structure);
    }
    counting.external = counting.redundants - counting.internal;
    return counting;
}

double largestComponent(const std::vector<Vec2>& vectors) {
    double largest = 0;
    for (Vec2 v : vectors) {
        largest = std::max({largest, std::abs(v.x), std::abs(v.y)});
    }
    return largest;
}

// Adds the forces that balance `loads` and returns by how much a mechanism leaves them unbalanced.
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

} // namespace

std::vector<SparseLine<double>> equilibriumRows(const Structure& structure) {
    std::vector<SparseLine<double>> rows(2 * structure.joints.size());
    int column = 0;
    for (const Bar& bar : structure.bars) {
        put(rows, bar.a, column, bar.along);
        put(rows, bar.b, column++, -bar.along);
    }
    for (const Restraint& restraint : structure.restraints) {
        put(rows, restraint.joint.index, column++, restraint.along);
    }
    return rows;
}

Equilibrium factorEquilibrium(const Structure& structure) {
    Equilibrium result;
    const std::size_t columns = structure.bars.size() + structure.restraints.size();
    result.factors = eliminate(equilibriumRows(structure), columns);
    result.counting = countingOf(structure, result.factors.steps.size());
    return result;
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
    // One step of refinement: what elimination lost of the last digits comes back.
    (void)addBalance(equilibrium, lackOfEquilibrium(structure, loads, result), result);
    result.residual = residualOf(structure, loads, result);
    return result;
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
