#include "statics/stiffness.hpp"

#include "core/tolerance.hpp"
#include "statics/stiffness_judge.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr int kRefinements = 3; // at most; each wins back the digits that the last solve lost

// What may lack to equilibrium over the largest force: in wide numbers twice the digits.
template <class Scalar>
constexpr double kLeast = kCancelled;
template <>
constexpr double kLeast<Wide> = kCancelled* kCancelled;

// Forces and displacements in the making, of the scaled truss; displacements without those that the
// supports impose.
template <class Scalar>
struct Motion {
    std::vector<VecOf<Scalar>> moves;
    std::vector<Scalar> forces;
    std::vector<VecOf<Scalar>> lack; // of equilibrium, at each joint
};

// All free displacements zero.
template <class Scalar>
Motion<Scalar> startOf(const Structure& structure, const kernel::BarsOf<Scalar>& bars,
                       const StiffnessOf<Scalar>& stiffness) {
    using Vec = VecOf<Scalar>;
    Motion<Scalar> motion;
    motion.moves.resize(structure.joints.size());
    motion.forces.reserve(structure.bars.size());
    const Scalar scale(1 / stiffness.scale);
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const kernel::BarOf<Scalar>& bar = bars.bars[i];
        const Vec move = Vec(stiffness.holds[at(structure.bars[i].b)].settled) -
                         Vec(stiffness.holds[at(structure.bars[i].a)].settled);
        motion.forces.push_back(bar.rigidity * (scale * dot(move, bar.along) - bar.strain));
    }
    return motion;
}

template <class Scalar>
void findLack(const Structure& structure, const kernel::BarsOf<Scalar>& bars,
              const std::vector<Vec2>& loads, Motion<Scalar>& motion) {
    motion.lack.assign(loads.begin(), loads.end());
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const VecOf<Scalar> pull = motion.forces[i] * bars.bars[i].along;
        VecOf<Scalar>& a = motion.lack[at(structure.bars[i].a)];
        VecOf<Scalar>& b = motion.lack[at(structure.bars[i].b)];
        a = a + pull;
        b = b - pull;
    }
}

template <class Scalar>
void addMoves(const Structure& structure, const kernel::BarsOf<Scalar>& bars,
              const std::vector<VecOf<Scalar>>& moves, Motion<Scalar>& motion) {
    for (std::size_t i = 0; i < moves.size(); ++i) {
        motion.moves[i] = motion.moves[i] + moves[i];
    }
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const kernel::BarOf<Scalar>& bar = bars.bars[i];
        motion.forces[i] +=
            bar.rigidity *
            dot(moves[at(structure.bars[i].b)] - moves[at(structure.bars[i].a)], bar.along);
    }
}

// Largest lack in a direction that is free to move.
double largestFree(const std::vector<Hold>& holds, const std::vector<Vec2>& lack) {
    double largest = 0;
    for (std::size_t i = 0; i < lack.size(); ++i) {
        const Vec2 free = kernel::freeIn(holds[i], lack[i]);
        largest = std::max({largest, std::abs(free.x), std::abs(free.y)});
    }
    return largest;
}

template <class Value>
auto narrowed(const std::vector<Value>& values) {
    std::vector<decltype(narrow(values.front()))> result;
    result.reserve(values.size());
    for (const Value& value : values) {
        result.push_back(narrow(value));
    }
    return result;
}

template <class Scalar>
Response respondIn(const Structure& structure, const JointPattern& pattern,
                   const StiffnessOf<Scalar>& stiffness, const std::vector<Vec2>& loads,
                   Judge judge) {
    const kernel::BarsOf<Scalar> bars = kernel::barsOf<Scalar>(structure);
    Motion<Scalar> motion = startOf(structure, bars, stiffness);
    Response response;
    EquilibriumForces& found = response.found;
    found.reactions.resize(structure.restraints.size());
    findLack(structure, bars, loads, motion);
    std::vector<Vec2> lack;
    for (int i = 0; i <= kRefinements; ++i) {
        std::vector<VecOf<Scalar>> moves = motion.lack;
        kernel::solveInPlace(pattern, stiffness, moves);
        addMoves(structure, bars, moves, motion);
        findLack(structure, bars, loads, motion);
        found.forces = narrowed(motion.forces);
        found.largest = largestOf(loads, found);
        lack = narrowed(motion.lack);
        if (largestFree(stiffness.holds, lack) <= kLeast<Scalar> * found.largest) {
            break;
        }
    }
    const std::vector<Vec2> shares = reactionSharesOf(structure, stiffness.holds);
    for (std::size_t i = 0; i < shares.size(); ++i) {
        found.reactions[i] = dot(-lack[structure.restraints[i].joint.at()], shares[i]);
    }
    found.largest = largestOf(loads, found);
    found.residual = residualOf(structure, loads, found);
    const std::vector<Vec2> moves = narrowed(motion.moves);
    for (std::size_t i = 0; i < structure.joints.size(); ++i) {
        response.displacements.push_back(narrow(Scalar(stiffness.scale) * motion.moves[i]) +
                                         stiffness.holds[i].settled);
    }
    if (judge != Judge::Nothing) {
        response.trust = judgeStiffness(structure, pattern, bars, stiffness,
                                        {loads, moves, lack, found, shares}, judge);
        // Judged were movements without what the supports impose.
        const double farthest = largestComponent(response.displacements);
        response.trust.displacementError *=
            farthest > 0 ? stiffness.scale * largestComponent(moves) / farthest : 1;
    }
    return response;
}

} // namespace

Stiffness factorStiffness(const Structure& structure, const JointPattern& pattern,
                          std::vector<Hold> holds) {
    return kernel::factored<double>(structure, pattern, std::move(holds));
}

WideStiffness factorWide(const Structure& structure, const JointPattern& pattern,
                         std::vector<Hold> holds) {
    return kernel::factored<Wide>(structure, pattern, std::move(holds));
}

void solveDisplacements(const JointPattern& pattern, const Stiffness& stiffness,
                        std::vector<Vec2>& right) {
    kernel::solveInPlace(pattern, stiffness, right);
    for (Vec2& move : right) {
        move = stiffness.scale * move;
    }
}

Response respond(const Structure& structure, const JointPattern& pattern,
                 const Stiffness& stiffness, const std::vector<Vec2>& loads, Judge judge) {
    return respondIn(structure, pattern, stiffness, loads, judge);
}

Response respond(const Structure& structure, const JointPattern& pattern,
                 const WideStiffness& stiffness, const std::vector<Vec2>& loads, Judge judge) {
    return respondIn(structure, pattern, stiffness, loads, judge);
}

} // namespace gusset
