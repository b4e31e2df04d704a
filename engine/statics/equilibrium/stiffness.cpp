#include "statics/equilibrium/stiffness.hpp"

#include "core/tolerance.hpp"
#include "statics/equilibrium/stiffness_judge.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr int kRefinements = 3; // at most; each recovers the digits that the last solve lost

// Acceptable residual relative to the largest force: with Wide, twice the digits.
template <class Scalar>
constexpr double kLeast = kCancelled;
template <>
constexpr double kLeast<Wide> = kCancelled* kCancelled;

// Forces and displacements during the solution, of the scaled truss; the displacements exclude
// those that the supports impose.
template <class Scalar>
struct Motion {
    std::vector<VecOf<Scalar>> moves;
    std::vector<Scalar> forces;
    std::vector<VecOf<Scalar>> lack; // residual at each joint
};

// The start: all free displacements zero.
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

// The largest residual in a direction that is free to move.
double largestFree(const std::vector<HeldJoint>& holds, const std::vector<Vec2>& lack) {
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

// A response that is not judged yet, with the data to judge it.
struct Answer {
    Response response;
    std::vector<Vec2> moves; // of the scaled truss, without those that the supports impose
    std::vector<Vec2> lack;
};

// A factored stiffness, with the data of its truss that all solutions share.
template <class Scalar>
struct Factored {
    const Structure& structure;
    const JointPattern& pattern;
    const StiffnessOf<Scalar>& stiffness;
    kernel::BarsOf<Scalar> bars = kernel::barsOf<Scalar>(structure);
    std::vector<Vec2> shares = reactionSharesOf(structure, stiffness.holds);

    [[nodiscard]] Answer answer(const std::vector<Vec2>& loads) const {
        Motion<Scalar> motion = startOf(structure, bars, stiffness);
        Answer answer;
        EquilibriumForces& found = answer.response.found;
        found.reactions.resize(structure.restraints.size());
        findLack(structure, bars, loads, motion);
        for (int i = 0; i <= kRefinements; ++i) {
            std::vector<VecOf<Scalar>> moves = motion.lack;
            kernel::solveInPlace(pattern, stiffness, moves);
            addMoves(structure, bars, moves, motion);
            findLack(structure, bars, loads, motion);
            found.forces = narrowed(motion.forces);
            found.largest = largestOf(loads, found);
            answer.lack = narrowed(motion.lack);
            if (largestFree(stiffness.holds, answer.lack) <= kLeast<Scalar> * found.largest) {
                break;
            }
        }
        for (std::size_t i = 0; i < shares.size(); ++i) {
            found.reactions[i] = dot(-answer.lack[structure.restraints[i].joint.at()], shares[i]);
        }
        found.largest = largestOf(loads, found);
        found.residual = residualOf(structure, loads, found);
        answer.moves = narrowed(motion.moves);
        for (std::size_t i = 0; i < structure.joints.size(); ++i) {
            answer.response.displacements.push_back(
                narrow(Scalar(stiffness.scale) * motion.moves[i]) + stiffness.holds[i].settled);
        }
        return answer;
    }

    [[nodiscard]] kernel::Changes changesOf(const Judged& judged) const {
        return kernel::changesOf(structure, bars, stiffness.holds, judged);
    }
    [[nodiscard]] kernel::Changes changesByArithmetic(const Judged& judged) const {
        return kernel::changesByArithmetic(structure, bars, stiffness.holds, judged);
    }

    [[nodiscard]] Trust trust(const JudgedChanges& changes, const Judged& judged,
                              Judge judge) const {
        return judgeStiffness(structure, pattern, bars, stiffness, changes, judged, judge);
    }
};

template <class Scalar>
Response respondIn(const Factored<Scalar>& factored, const std::vector<Vec2>& loads, Judge judge) {
    Answer answer = factored.answer(loads);
    Response& response = answer.response;
    const Judged judged{loads, answer.moves, answer.lack, response.found, factored.shares};
    response.trust = factored.trust(
        {factored.changesOf(judged), factored.changesByArithmetic(judged)}, judged, judge);
    // The judged displacements exclude those that the supports impose.
    const double farthest = largestComponent(response.displacements);
    response.trust.displacementError *=
        farthest > 0 ? factored.stiffness.scale * largestComponent(answer.moves) / farthest : 1;
    return std::move(response);
}

template <class Scalar>
UnitResponses respondToUnitsIn(const Factored<Scalar>& factored, const std::vector<JointId>& joints,
                               Judge judge) {
    UnitResponses units;
    JudgedChanges changes;
    Answer most;
    std::vector<Vec2> loads(factored.structure.joints.size());
    units.each.reserve(joints.size());
    for (const JointId joint : joints) {
        loads[joint.at()] = {0, -1};
        Answer answer = factored.answer(loads);
        Response& response = answer.response;
        const Judged judged{loads, answer.moves, answer.lack, response.found, factored.shares};
        widen(changes.all, factored.changesOf(judged));
        widen(changes.byArithmetic, factored.changesByArithmetic(judged));
        loads[joint.at()] = {};
        widen(most.response.found, response.found);
        widen(most.moves, answer.moves);
        units.farthest = std::max(units.farthest, largestComponent(response.displacements));
        units.each.push_back(std::move(response));
    }
    units.largest = most.response.found.largest;
    units.residual = most.response.found.residual;
    units.trust = factored.trust(
        changes, {loads, most.moves, most.lack, most.response.found, factored.shares}, judge);
    return units;
}

} // namespace

Stiffness factorStiffness(const Structure& structure, const JointPattern& pattern,
                          std::vector<HeldJoint> holds) {
    return kernel::factored<double>(structure, pattern, std::move(holds));
}

WideStiffness factorWide(const Structure& structure, const JointPattern& pattern,
                         std::vector<HeldJoint> holds) {
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
    return respondIn<double>({structure, pattern, stiffness}, loads, judge);
}

Response respond(const Structure& structure, const JointPattern& pattern,
                 const WideStiffness& stiffness, const std::vector<Vec2>& loads, Judge judge) {
    return respondIn<Wide>({structure, pattern, stiffness}, loads, judge);
}

UnitResponses respondToUnits(const Structure& structure, const JointPattern& pattern,
                             const Stiffness& stiffness, const std::vector<JointId>& joints,
                             Judge judge) {
    return respondToUnitsIn<double>({structure, pattern, stiffness}, joints, judge);
}

UnitResponses respondToUnits(const Structure& structure, const JointPattern& pattern,
                             const WideStiffness& stiffness, const std::vector<JointId>& joints,
                             Judge judge) {
    return respondToUnitsIn<Wide>({structure, pattern, stiffness}, joints, judge);
}

} // namespace gusset
