#pragma once
// How far the forces and displacements of a stiffness solution can be trusted. Let G hold the
// directions of the bars at their joints, k their stiffnesses, K = G·k·Gᵀ. If loads are off by r
// and elongations by γ, forces are off by k·Gᵀ·K⁻¹·r + (k − k·Gᵀ·K⁻¹·G·k)·γ. The second matrix is
// an oblique projection whose size does not grow with the ratio of stiffnesses (G. W. Stewart, On
// scaled projections and pseudoinverses, Linear Algebra Appl. 112 (1989) 189–193). Only the error
// of computing elongations as differences of displacements does, and this is counted. Included only
// by .cpp files of statics.

#include "statics/equilibrium/judge.hpp"
#include "statics/equilibrium/stiffness_kernel.hpp"

#include <utility>
#include <vector>

namespace gusset {

struct Judged {
    const std::vector<Vec2>& loads;
    std::vector<Vec2> moves; // of the scaled truss
    const std::vector<Vec2>& lack;
    const EquilibriumForces& found;
    const std::vector<Vec2>& shares; // reactionSharesOf
};

namespace kernel {

// Half a unit in the last place of 1, for either precision.
template <class Scalar>
inline constexpr double kUnit = kHalfPlace;
template <>
inline constexpr double kUnit<Wide> = 4.9303806576313238e-32; // 2^-104

// How much rounding may have changed the inputs.
struct Changes {
    std::vector<Vec2> loads;         // N, at each joint: from coordinates, loads and sums
    std::vector<double> elongations; // as forces, k·γ, N, of each bar
};

inline void widen(Changes& most, const Changes& by) { // changes are absolute values
    gusset::widen(most.loads, by.loads);
    gusset::widen(most.elongations, by.elongations);
}

[[nodiscard]] inline double sizeOf(Vec2 v) { return std::abs(v.x) + std::abs(v.y); }
[[nodiscard]] inline Vec2 sizesOf(Vec2 v) { return {std::abs(v.x), std::abs(v.y)}; }
inline void addTo(Vec2& sum, Vec2 v) { sum = sum + v; }

// The residuals of the sums, and the precision that elongations lose as differences of
// displacements.
template <class Scalar>
[[nodiscard]] Changes changesBySums(const Structure& structure, const BarsOf<Scalar>& bars,
                                    const std::vector<HeldJoint>& holds, const Judged& judged) {
    Changes changes;
    for (std::size_t i = 0; i < judged.loads.size(); ++i) {
        // Residuals in held directions are carried by supports.
        changes.loads.push_back(sizesOf(fromFree(holds[i], freeIn(holds[i], judged.lack[i]))));
    }
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        const double moved = sizeOf(judged.moves[at(bar.a)]) + sizeOf(judged.moves[at(bar.b)]);
        changes.elongations.push_back(2 * narrow(bars.bars[i].rigidity) * kUnit<Scalar> * moved);
    }
    return changes;
}

// The changes that wider arithmetic would avoid.
template <class Scalar>
[[nodiscard]] Changes changesByArithmetic(const Structure& structure, const BarsOf<Scalar>& bars,
                                          const std::vector<HeldJoint>& holds,
                                          const Judged& judged) {
    Changes changes = changesBySums(structure, bars, holds, judged);
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        const double force = 2 * kUnit<Scalar> * std::abs(judged.found.forces[i]);
        addTo(changes.loads[at(bar.a)], force * sizesOf(bar.along));
        addTo(changes.loads[at(bar.b)], force * sizesOf(bar.along));
        changes.elongations[i] += force;
    }
    return changes;
}

// All changes that rounding may have made: loads, coordinates, directions of supports, settlements
// and strains are given as doubles, whatever precision they are computed with.
template <class Scalar>
[[nodiscard]] Changes changesOf(const Structure& structure, const BarsOf<Scalar>& bars,
                                const std::vector<HeldJoint>& holds, const Judged& judged) {
    Changes changes = changesBySums(structure, bars, holds, judged);
    for (std::size_t i = 0; i < judged.loads.size(); ++i) {
        addTo(changes.loads[i], kHalfPlace * sizesOf(judged.loads[i]));
    }
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        const double force = std::abs(judged.found.forces[i]);
        const Vec2 change = roundingOf(structure, bar, force);
        addTo(changes.loads[at(bar.a)], change);
        addTo(changes.loads[at(bar.b)], change);
        const double given =
            (sizeOf(holds[at(bar.a)].settled) + sizeOf(holds[at(bar.b)].settled)) / bars.scale +
            std::abs(narrow(bars.bars[i].strain));
        changes.elongations[i] += 2 * kHalfPlace * (narrow(bars.bars[i].rigidity) * given + force);
    }
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        const double force = 2 * kHalfPlace * std::abs(judged.found.reactions[i]);
        addTo(changes.loads[structure.restraints[i].joint.at()],
              force * sizesOf(structure.restraints[i].along));
    }
    return changes;
}

// The matrix of the errors that the changes may cause, one row per output: forces and reactions
// relative to the largest, then, where they are judged, displacements relative to the largest
// displacement. The inputs are one per component of a joint, then one per bar, each a fraction of
// the change there.
template <class Scalar>
struct ErrorMatrix {
    using Vec = VecOf<Scalar>;
    const Structure& structure;
    const JointPattern& pattern;
    const BarsOf<Scalar>& bars;
    const StiffnessOf<Scalar>& stiffness;
    const std::vector<Vec2>& shares;
    Changes changes;
    double perForce = 0; // 1 over the largest force; 0 where forces are not judged
    double perMove = 0;  // likewise

    [[nodiscard]] std::size_t barCount() const { return structure.bars.size(); }
    [[nodiscard]] std::size_t jointCount() const { return structure.joints.size(); }
    [[nodiscard]] std::size_t forceCount() const { return barCount() + shares.size(); }
    [[nodiscard]] std::size_t outputs() const { return forceCount() + 2 * jointCount(); }

    [[nodiscard]] Scalar elongation(std::size_t i, const std::vector<Vec>& moves) const {
        const Bar& bar = structure.bars[i];
        return dot(moves[at(bar.b)] - moves[at(bar.a)], bars.bars[i].along);
    }
    void pull(std::size_t i, Scalar force, std::vector<Vec>& joints) const { // joints += G·force
        const Bar& bar = structure.bars[i];
        const Vec ends = force * bars.bars[i].along;
        joints[at(bar.a)] = joints[at(bar.a)] - ends;
        joints[at(bar.b)] = joints[at(bar.b)] + ends;
    }

    // The forces to apply at the joints so that the supports there feel reactions `y`.
    [[nodiscard]] std::vector<Vec2> feltBySupports(const std::vector<double>& y) const {
        std::vector<Vec2> felt(jointCount());
        for (std::size_t r = 0; r < shares.size(); ++r) {
            addTo(felt[structure.restraints[r].joint.at()],
                  (-perForce * y[barCount() + r]) * shares[r]);
        }
        return felt;
    }

    // The weights of changes in the outputs `y`: at joints, K⁻¹·(G·k·v + s) plus the part that goes
    // straight into supports; at bars, v. A reaction is −share·(load + G·force).
    struct Weights {
        std::vector<Vec> joints;
        std::vector<Scalar> bars;
    };
    [[nodiscard]] Weights weightsOf(const std::vector<double>& y) const {
        const std::vector<Vec2> felt = feltBySupports(y);
        const std::vector<Vec> straight(felt.begin(), felt.end());
        Weights weights;
        weights.joints.resize(jointCount());
        for (std::size_t j = 0; j < jointCount(); ++j) {
            const std::size_t place = forceCount() + 2 * j;
            weights.joints[j] = Vec(Vec2{perMove * y[place], perMove * y[place + 1]});
        }
        for (std::size_t i = 0; i < barCount(); ++i) {
            weights.bars.push_back(Scalar(perForce * y[i]) - elongation(i, straight));
            pull(i, bars.bars[i].rigidity * weights.bars[i], weights.joints);
        }
        solveInPlace(pattern, stiffness, weights.joints);
        for (std::size_t i = 0; i < barCount(); ++i) {
            weights.bars[i] -= elongation(i, weights.joints);
        }
        for (std::size_t j = 0; j < jointCount(); ++j) {
            weights.joints[j] = weights.joints[j] + straight[j];
        }
        return weights;
    }

    [[nodiscard]] std::vector<double> transposed(const std::vector<double>& y) const {
        const Weights weights = weightsOf(y);
        std::vector<double> z;
        z.reserve(2 * jointCount() + barCount());
        for (std::size_t j = 0; j < jointCount(); ++j) {
            const Vec2 weight = narrow(weights.joints[j]);
            z.push_back(changes.loads[j].x * weight.x);
            z.push_back(changes.loads[j].y * weight.y);
        }
        for (std::size_t i = 0; i < barCount(); ++i) {
            z.push_back(changes.elongations[i] * narrow(weights.bars[i]));
        }
        return z;
    }

    [[nodiscard]] std::vector<double> times(const std::vector<double>& z) const {
        std::vector<Vec> moves(jointCount());
        for (std::size_t j = 0; j < jointCount(); ++j) {
            moves[j] = Vec(Vec2{changes.loads[j].x * z[2 * j], changes.loads[j].y * z[2 * j + 1]});
        }
        std::vector<Vec> lack = moves;
        std::vector<Scalar> forces;
        forces.reserve(barCount());
        for (std::size_t i = 0; i < barCount(); ++i) {
            forces.push_back(Scalar(changes.elongations[i] * z[2 * jointCount() + i]));
            pull(i, -forces[i], moves);
        }
        solveInPlace(pattern, stiffness, moves);
        std::vector<double> y;
        y.reserve(outputs());
        for (std::size_t i = 0; i < barCount(); ++i) {
            forces[i] += bars.bars[i].rigidity * elongation(i, moves);
            pull(i, -forces[i], lack);
            y.push_back(perForce * narrow(forces[i]));
        }
        for (std::size_t r = 0; r < shares.size(); ++r) {
            const Vec2 here = narrow(lack[structure.restraints[r].joint.at()]);
            y.push_back(-perForce * dot(here, shares[r]));
        }
        for (std::size_t j = 0; j < jointCount(); ++j) {
            const Vec2 move = narrow(moves[j]);
            y.push_back(perMove * move.x);
            y.push_back(perMove * move.y);
        }
        return y;
    }

    [[nodiscard]] NormEstimate largestRow(std::size_t start) const {
        return estimateNorm(
            outputs(), [this](const std::vector<double>& y) { return transposed(y); },
            [this](const std::vector<double>& z) { return times(z); }, start);
    }
};

// The largest row of the forces alone, or of the displacements alone.
template <class Scalar>
[[nodiscard]] NormEstimate rowOfForces(ErrorMatrix<Scalar>& errors, const EquilibriumForces& found,
                                       double largest) {
    errors.perForce = 1 / largest;
    errors.perMove = 0;
    return errors.largestRow(norm_estimate::largestAt(inOneRow(found)));
}
template <class Scalar>
[[nodiscard]] NormEstimate rowOfMoves(ErrorMatrix<Scalar>& errors, const std::vector<Vec2>& moves,
                                      double farthest) {
    if (!(farthest > 0)) {
        return {};
    }
    errors.perForce = 0;
    errors.perMove = 1 / farthest;
    std::size_t place = 0;
    for (std::size_t j = 0; j < moves.size(); ++j) {
        place = std::abs(moves[j].x) == farthest   ? 2 * j
                : std::abs(moves[j].y) == farthest ? 2 * j + 1
                                                   : place;
    }
    return errors.largestRow(errors.forceCount() + place);
}

// The largest row of both together.
template <class Scalar>
[[nodiscard]] NormEstimate rowOfAll(ErrorMatrix<Scalar>& errors, const EquilibriumForces& found,
                                    double largest, double farthest) {
    errors.perForce = 1 / largest;
    errors.perMove = farthest > 0 ? 1 / farthest : 0;
    return errors.largestRow(norm_estimate::largestAt(inOneRow(found)));
}

// See seekAmplification. Loads and forces have unit scale.
template <class Scalar>
void seekAmplificationFrom(std::size_t force, ErrorMatrix<Scalar> errors, Trust& trust) {
    errors.perForce = 1;
    errors.perMove = 0;
    errors.changes.loads.assign(errors.jointCount(), Vec2{1, 1});
    errors.changes.elongations.assign(errors.barCount(), 0);
    const auto unit = [](std::size_t count, std::size_t place) {
        std::vector<double> one(count);
        one[place] = 1;
        return one;
    };
    const std::size_t inputs = 2 * errors.jointCount();
    seekAmplification(
        force, errors.barCount(),
        [&](std::size_t i) {
            std::vector<double> weights = errors.transposed(unit(errors.outputs(), i));
            weights.resize(inputs);
            return weights;
        },
        [&](std::size_t i) { return errors.times(unit(inputs + errors.barCount(), i)); }, trust);
}

} // namespace kernel

// All changes that rounding may have made, and the part that wider arithmetic would avoid.
struct JudgedChanges {
    kernel::Changes all;
    kernel::Changes byArithmetic;
};

// For a structure with bars. Changes and judged values may be the largest over several solutions,
// which are then judged together.
template <class Scalar>
[[nodiscard]] Trust
judgeStiffness(const Structure& structure, const JointPattern& pattern,
               const kernel::BarsOf<Scalar>& bars, const StiffnessOf<Scalar>& stiffness,
               const JudgedChanges& changes, const Judged& judged, Judge judge) {
    Trust trust;
    trust.wide = !std::is_same_v<Scalar, double>;
    const EquilibriumForces& found = judged.found;
    const double largest = found.largest > 0 ? found.largest : 1;
    const double farthest = judge == Judge::All ? largestComponent(judged.moves) : 0;
    const kernel::Changes& given = changes.all;
    kernel::ErrorMatrix<Scalar> errors{structure, pattern, bars, stiffness, judged.shares, given};
    // A small load at every joint, so that a nearby mechanism is found whatever the loads are.
    for (Vec2& load : errors.changes.loads) {
        load = load + Vec2{kHalfPlace * largest, kHalfPlace * largest};
    }
    const double all = kernel::rowOfAll(errors, found, largest, farthest).norm;
    trust.error = found.largest > 0 ? all : 0;
    trust.displacementError = farthest > 0 ? all : 0;
    if (mayAmplify(all)) {
        const NormEstimate force = kernel::rowOfForces(errors, found, largest);
        if (mayAmplify(force.norm)) {
            kernel::seekAmplificationFrom(force.column, errors, trust);
        }
    }
    errors.changes = given;
    if (!(all <= kWholeFile) && found.largest > 0) { // judge both alone, from the given changes
        trust.error = kernel::rowOfForces(errors, found, largest).norm;
        trust.displacementError = kernel::rowOfMoves(errors, judged.moves, farthest).norm;
    }
    trust.condition = trust.error / kHalfPlace;
    if (!(trust.error <= kTrusted && trust.displacementError <= kTrusted)) {
        errors.changes = changes.byArithmetic;
        trust.lost = std::max(kernel::rowOfForces(errors, found, largest).norm,
                              kernel::rowOfMoves(errors, judged.moves, farthest).norm);
    }
    return trust;
}

} // namespace gusset
