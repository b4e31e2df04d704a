#pragma once
// How far the forces and displacements of a stiffness solution can be trusted. Let G hold the
// directions of the bars at their joints, k their stiffnesses, K = G·k·Gᵀ. If loads are off by r
// and elongations by γ, forces are off by k·Gᵀ·K⁻¹·r + (k − k·Gᵀ·K⁻¹·G·k)·γ. The second matrix is
// an oblique projection whose size does not grow with the ratio of stiffnesses (G. W. Stewart, On
// scaled projections and pseudoinverses, Linear Algebra Appl. 112 (1989) 189–193): only what is
// lost in computing elongations from displacements does, and this is counted. Included by .cpp
// files of statics only.

#include "statics/judge.hpp"
#include "statics/norm_estimate.hpp"
#include "statics/stiffness_kernel.hpp"

#include <utility>
#include <vector>

namespace gusset {

struct Judged {
    const std::vector<Vec2>& loads;
    std::vector<Vec2> moves; // of the scaled truss
    const std::vector<Vec2>& lack;
    const EquilibriumForces& found;
};

namespace kernel {

template <class Scalar>
inline constexpr double kUnit = kHalfPlace;
template <>
inline constexpr double kUnit<Wide> = 4.9303806576313238e-32; // 2^-104

// What rounding may have changed.
struct Changes {
    std::vector<Vec2> loads;         // N, at each joint: by coordinates, loads and sums
    std::vector<double> elongations; // as forces, k·γ, N, of each bar
};

inline void widen(Changes& most, const Changes& by) { // changes have no sign
    gusset::widen(most.loads, by.loads);
    gusset::widen(most.elongations, by.elongations);
}

[[nodiscard]] inline double sizeOf(Vec2 v) { return std::abs(v.x) + std::abs(v.y); }

template <class Scalar>
[[nodiscard]] Changes changesOf(const Structure& structure, const BarsOf<Scalar>& bars,
                                const std::vector<Hold>& holds, const Judged& judged) {
    Changes changes;
    for (std::size_t i = 0; i < judged.loads.size(); ++i) {
        const Vec2 load = judged.loads[i];
        // What lacks in held directions is carried by supports.
        const Vec2 lack = fromFree(holds[i], freeIn(holds[i], judged.lack[i]));
        changes.loads.push_back({kUnit<double> * std::abs(load.x) + std::abs(lack.x),
                                 kUnit<double> * std::abs(load.y) + std::abs(lack.y)});
    }
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        const double force = std::abs(judged.found.forces[i]);
        const Vec2 change = roundingOf(structure, bar, force);
        changes.loads[at(bar.a)] = changes.loads[at(bar.a)] + change;
        changes.loads[at(bar.b)] = changes.loads[at(bar.b)] + change;
        const double moved = sizeOf(judged.moves[at(bar.a)]) + sizeOf(judged.moves[at(bar.b)]);
        // Settlements and strains are given as doubles, whatever they are computed with.
        const double given =
            (sizeOf(holds[at(bar.a)].settled) + sizeOf(holds[at(bar.b)].settled)) / bars.scale +
            std::abs(narrow(bars.bars[i].strain));
        const double rigidity = narrow(bars.bars[i].rigidity);
        changes.elongations.push_back(2 * rigidity *
                                          (kUnit<Scalar> * moved + kUnit<double> * given) +
                                      2 * kUnit<double> * force);
    }
    return changes;
}

// The matrix of the errors that the changes may cause, an output a row: of forces over the largest
// force, then, where they are judged, of displacements over the largest displacement. Its inputs
// are one at each component of a joint, then one a bar, each the share of the change there.
template <class Scalar>
struct ErrorMatrix {
    using Vec = VecOf<Scalar>;
    const Structure& structure;
    const JointPattern& pattern;
    const BarsOf<Scalar>& bars;
    const StiffnessOf<Scalar>& stiffness;
    const Changes& changes;
    double perForce = 0; // 1 over the largest force; 0 where forces are not judged
    double perMove = 0;  // likewise

    [[nodiscard]] std::size_t barCount() const { return structure.bars.size(); }
    [[nodiscard]] std::size_t jointCount() const { return structure.joints.size(); }
    [[nodiscard]] std::size_t outputs() const { return barCount() + 2 * jointCount(); }

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

    // What changes of the outputs' size at the outputs `y` weigh at joints, K⁻¹·(G·k·v + s), and
    // at bars.
    [[nodiscard]] std::vector<Vec> weightsAtJoints(const std::vector<double>& y) const {
        std::vector<Vec> q(jointCount());
        for (std::size_t j = 0; j < jointCount(); ++j) {
            const std::size_t place = barCount() + 2 * j;
            q[j] = Vec(Vec2{perMove * y[place], perMove * y[place + 1]});
        }
        for (std::size_t i = 0; i < barCount(); ++i) {
            pull(i, bars.bars[i].rigidity * Scalar(perForce * y[i]), q);
        }
        solveInPlace(pattern, stiffness, q);
        return q;
    }

    [[nodiscard]] std::vector<double> transposed(const std::vector<double>& y) const {
        const std::vector<Vec> q = weightsAtJoints(y);
        std::vector<double> z;
        z.reserve(2 * jointCount() + barCount());
        for (std::size_t j = 0; j < jointCount(); ++j) {
            const Vec2 weight = narrow(q[j]);
            z.push_back(changes.loads[j].x * weight.x);
            z.push_back(changes.loads[j].y * weight.y);
        }
        for (std::size_t i = 0; i < barCount(); ++i) {
            const Scalar weight = Scalar(perForce * y[i]) - elongation(i, q);
            z.push_back(changes.elongations[i] * narrow(weight));
        }
        return z;
    }

    [[nodiscard]] std::vector<double> times(const std::vector<double>& z) const {
        std::vector<Vec> moves(jointCount());
        for (std::size_t j = 0; j < jointCount(); ++j) {
            moves[j] = Vec(Vec2{changes.loads[j].x * z[2 * j], changes.loads[j].y * z[2 * j + 1]});
        }
        std::vector<Scalar> own;
        own.reserve(barCount());
        for (std::size_t i = 0; i < barCount(); ++i) {
            own.push_back(Scalar(changes.elongations[i] * z[2 * jointCount() + i]));
            pull(i, -own[i], moves);
        }
        solveInPlace(pattern, stiffness, moves);
        std::vector<double> y;
        y.reserve(outputs());
        for (std::size_t i = 0; i < barCount(); ++i) {
            y.push_back(perForce * narrow(own[i] + bars.bars[i].rigidity * elongation(i, moves)));
        }
        for (std::size_t j = 0; j < jointCount(); ++j) {
            const Vec2 move = narrow(moves[j]);
            y.push_back(perMove * move.x);
            y.push_back(perMove * move.y);
        }
        return y;
    }

    [[nodiscard]] NormEstimate largestRow() const {
        return estimateNorm(
            outputs(), [this](const std::vector<double>& y) { return transposed(y); },
            [this](const std::vector<double>& z) { return times(z); });
    }
};

} // namespace kernel

// Given what rounding may have changed.
template <class Scalar>
[[nodiscard]] Trust
judgeStiffness(const Structure& structure, const JointPattern& pattern,
               const kernel::BarsOf<Scalar>& bars, const StiffnessOf<Scalar>& stiffness,
               const kernel::Changes& changes, const Judged& judged, Judge judge) {
    Trust trust;
    trust.wide = !std::is_same_v<Scalar, double>;
    kernel::ErrorMatrix<Scalar> errors{structure, pattern, bars, stiffness, changes};
    const double farthest = largestComponent(judged.moves);
    if (!(judged.found.largest > 0) || structure.bars.empty()) {
        return trust;
    }
    errors.perForce = 1 / judged.found.largest;
    const NormEstimate force = errors.largestRow();
    trust.error = force.norm;
    trust.condition = force.norm / kernel::kUnit<double>;
    if (force.column < structure.bars.size()) {
        trust.member = MemberId{static_cast<int>(force.column)};
        std::vector<double> one(errors.outputs());
        one[force.column] = judged.found.largest;
        const std::vector<VecOf<Scalar>> weights = errors.weightsAtJoints(one);
        for (std::size_t j = 0; j < weights.size(); ++j) {
            noteWeight(trust, static_cast<int>(j), narrow(weights[j]));
        }
    }
    if (judge == Judge::All && farthest > 0) {
        errors.perForce = 0;
        errors.perMove = 1 / farthest;
        trust.displacementError = errors.largestRow().norm;
    }
    return trust;
}

} // namespace gusset
