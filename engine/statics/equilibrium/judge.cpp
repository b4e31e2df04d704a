#include "statics/equilibrium/judge.hpp"

#include <cmath>
#include <utility>

namespace gusset {

namespace {

using Numbers = std::vector<double>;

void multiply(const Numbers& by, Numbers& v) {
    for (std::size_t i = 0; i < v.size(); ++i) {
        v[i] *= by[i];
    }
}

// A⁻¹·right and A⁻ᵀ·right.
Numbers solved(const Equilibrium& equilibrium, Numbers right) {
    return solveReduced(equilibrium.factors, right);
}
Numbers solvedTransposed(const Equilibrium& equilibrium, Numbers right) {
    return solveTransposed(equilibrium.factors, right);
}

Numbers absolute(const std::vector<Vec2>& joints, double factor) {
    Numbers rows;
    rows.reserve(2 * joints.size());
    for (const Vec2 v : joints) {
        rows.push_back(factor * std::abs(v.x));
        rows.push_back(factor * std::abs(v.y));
    }
    return rows;
}

void addAt(int joint, Vec2 v, Numbers& rows) {
    const auto row = 2 * static_cast<std::size_t>(joint);
    rows[row] += v.x;
    rows[row + 1] += v.y;
}

// The largest row of |A⁻¹|·changes.
NormEstimate largestError(const Equilibrium& equilibrium, const Numbers& changes,
                          std::size_t start) {
    return estimateNorm(
        equilibrium.factors.columns,
        [&](const Numbers& x) {
            Numbers y = solvedTransposed(equilibrium, x);
            multiply(changes, y);
            return y;
        },
        [&](Numbers y) {
            multiply(changes, y);
            return solved(equilibrium, std::move(y));
        },
        start);
}

// The index of the largest component, counting both components of each vector.
std::size_t largestPlace(const std::vector<Vec2>& vectors) {
    return norm_estimate::largestAt(absolute(vectors, 1));
}

// A unit vector.
Numbers unit(std::size_t count, std::size_t at) {
    Numbers one(count);
    one[at] = 1;
    return one;
}

// One row of |A⁻¹|·changes.
double rowOf(const Equilibrium& equilibrium, const Numbers& changes, std::size_t row) {
    Numbers weights = solvedTransposed(equilibrium, unit(equilibrium.factors.columns, row));
    multiply(changes, weights);
    return norm_estimate::sumOf(weights);
}

} // namespace

Vec2 roundingOf(const Structure& structure, const Bar& bar, double force) {
    const Vec2 a = structure.joints[static_cast<std::size_t>(bar.a)];
    const Vec2 b = structure.joints[static_cast<std::size_t>(bar.b)];
    const auto change = [&](double along, double from, double to) {
        return kHalfPlace * force *
               (2 * std::abs(along) + (std::abs(from) + std::abs(to)) / bar.length);
    };
    return {change(bar.along.x, a.x, b.x), change(bar.along.y, a.y, b.y)};
}

std::vector<double> inOneRow(const EquilibriumForces& found) {
    std::vector<double> row = found.forces;
    row.insert(row.end(), found.reactions.begin(), found.reactions.end());
    return row;
}

std::vector<double> changesOf(const Structure& structure, const std::vector<Vec2>& loads,
                              const EquilibriumForces& found) {
    Numbers changes = absolute(loads, kHalfPlace);
    const Numbers lack = absolute(lackOfEquilibrium(structure, loads, found), 1);
    for (std::size_t i = 0; i < changes.size(); ++i) {
        changes[i] += lack[i];
    }
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Vec2 change = roundingOf(structure, structure.bars[i], std::abs(found.forces[i]));
        addAt(structure.bars[i].a, change, changes);
        addAt(structure.bars[i].b, change, changes);
    }
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        const Restraint& restraint = structure.restraints[i];
        const double force = 2 * kHalfPlace * std::abs(found.reactions[i]);
        addAt(restraint.joint.index,
              {force * std::abs(restraint.along.x), force * std::abs(restraint.along.y)}, changes);
    }
    return changes;
}

void widen(std::vector<double>& most, const std::vector<double>& by) {
    most.resize(by.size());
    for (std::size_t i = 0; i < by.size(); ++i) {
        most[i] = std::max(most[i], std::abs(by[i]));
    }
}

void widen(std::vector<Vec2>& most, const std::vector<Vec2>& by) {
    most.resize(by.size());
    for (std::size_t i = 0; i < by.size(); ++i) {
        most[i] = {std::max(most[i].x, std::abs(by[i].x)), std::max(most[i].y, std::abs(by[i].y))};
    }
}

void widen(EquilibriumForces& most, const EquilibriumForces& by) {
    widen(most.forces, by.forces);
    widen(most.reactions, by.reactions);
    most.largest = std::max(most.largest, by.largest);
    most.residual = std::max(most.residual, by.residual);
}

Trust judgeForces(const Structure& structure, const Equilibrium& equilibrium,
                  const std::vector<double>& given, const EquilibriumForces& found) {
    const Factors<double>& factors = equilibrium.factors;
    Trust trust;
    if (factors.columns == 0) {
        return trust;
    }
    // A small load at every joint, so that a nearby mechanism is found whatever the loads are.
    const double largest = found.largest > 0 ? found.largest : 1;
    Numbers changes = given;
    for (double& change : changes) {
        change += kHalfPlace * largest;
    }
    const std::size_t start = norm_estimate::largestAt(inOneRow(found));
    const NormEstimate row = largestError(equilibrium, changes, start);
    trust.error = found.largest > 0 ? row.norm / largest : 0;
    if (mayAmplify(row.norm / largest)) {
        seekAmplification(
            row.column, structure.bars.size(),
            [&](std::size_t i) { return solvedTransposed(equilibrium, unit(factors.columns, i)); },
            [&](std::size_t i) { return solved(equilibrium, unit(factors.rows, i)); }, trust);
    }
    // If at least half of it is due to the given changes, as usual, it stands.
    if (trust.error > kWholeFile &&
        trust.error > 2 * rowOf(equilibrium, given, row.column) / largest) {
        trust.error = sharpErrorOf(equilibrium, given, found);
    }
    trust.condition = trust.error / kHalfPlace;
    return trust;
}

double sharpErrorOf(const Equilibrium& equilibrium, const std::vector<double>& changes,
                    const EquilibriumForces& found) {
    const std::size_t start = norm_estimate::largestAt(inOneRow(found));
    return largestError(equilibrium, changes, start).norm / found.largest;
}

double judgeDisplacements(const Structure& structure, const Equilibrium& equilibrium,
                          const EquilibriumForces& found, double forceError,
                          const std::vector<Vec2>& displacements) {
    const double farthest = largestComponent(displacements);
    if (!(farthest > 0)) {
        return 0;
    }
    // How much the rounding of a direction may contribute along these displacements.
    const auto along = [&](Vec2 rounding, int joint) {
        const Vec2 move = displacements[static_cast<std::size_t>(joint)];
        return std::abs(rounding.x * move.x) + std::abs(rounding.y * move.y);
    };
    Numbers changes;
    changes.reserve(equilibrium.factors.columns);
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        const double lost = 2 * kHalfPlace * std::abs(found.forces[i]) + forceError * found.largest;
        const Vec2 rounding = roundingOf(structure, bar, 1);
        changes.push_back(along(rounding, bar.a) + along(rounding, bar.b) +
                          2 * kHalfPlace * std::abs(bar.strain) +
                          lost * bar.length / bar.stiffness);
    }
    for (const Restraint& restraint : structure.restraints) {
        changes.push_back(along(2 * kHalfPlace * restraint.along, restraint.joint.index) +
                          kHalfPlace * std::abs(restraint.settle));
    }
    const NormEstimate row = estimateNorm(
        equilibrium.factors.rows,
        [&](const Numbers& x) {
            Numbers y = solved(equilibrium, x);
            multiply(changes, y);
            return y;
        },
        [&](Numbers y) {
            multiply(changes, y);
            return solvedTransposed(equilibrium, std::move(y));
        },
        largestPlace(displacements));
    return row.norm / farthest;
}

} // namespace gusset
