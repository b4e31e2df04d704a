#include "statics/judge.hpp"

#include "statics/norm_estimate.hpp"

#include <algorithm>
#include <cmath>

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

void noteWeight(Trust& trust, int joint, Vec2 weight) {
    const double size = std::max(std::abs(weight.x), std::abs(weight.y));
    if (size > trust.amplification) {
        trust.amplification = size;
        trust.joint = JointId{joint};
    }
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
                  const std::vector<double>& changes, const EquilibriumForces& found) {
    Trust trust;
    if (!(found.largest > 0) || equilibrium.factors.columns == 0) {
        return trust;
    }
    const NormEstimate row = estimateNorm(
        equilibrium.factors.columns,
        [&](const Numbers& x) {
            Numbers y = solvedTransposed(equilibrium, x);
            multiply(changes, y);
            return y;
        },
        [&](Numbers y) {
            multiply(changes, y);
            return solved(equilibrium, std::move(y));
        });
    trust.error = row.norm / found.largest;
    trust.condition = trust.error / kHalfPlace;
    if (row.column < structure.bars.size()) {
        trust.member = MemberId{static_cast<int>(row.column)};
    }
    Numbers one(equilibrium.factors.columns);
    one[row.column] = 1;
    const Numbers weights = solvedTransposed(equilibrium, std::move(one));
    for (std::size_t j = 0; j < structure.joints.size(); ++j) {
        noteWeight(trust, static_cast<int>(j), {weights[2 * j], weights[2 * j + 1]});
    }
    return trust;
}

double judgeDisplacements(const Structure& structure, const Equilibrium& equilibrium,
                          const EquilibriumForces& found, double forceError,
                          const std::vector<Vec2>& displacements) {
    const double farthest = largestComponent(displacements);
    if (!(farthest > 0)) {
        return 0;
    }
    Numbers changes(equilibrium.factors.columns);
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        const Vec2 a = displacements[static_cast<std::size_t>(bar.a)];
        const Vec2 b = displacements[static_cast<std::size_t>(bar.b)];
        const double moved = std::abs(a.x) + std::abs(a.y) + std::abs(b.x) + std::abs(b.y);
        const double lost = 2 * kHalfPlace * std::abs(found.forces[i]) + forceError * found.largest;
        changes[i] = 2 * kHalfPlace * moved + lost * bar.length / bar.stiffness;
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
        });
    return row.norm / farthest;
}

} // namespace gusset
