#pragma once
// A walk from joint to joint with one force called X, or two called X and Y, where no joint has
// fewer than three unknowns: the forces on the way are written as a + b X, until a joint has an
// equation to spare, which gives X. L. Henneberg, Die graphische Statik der starren Systeme,
// Leipzig 1911, treats complex trusses by such a force (from memory). Private to hand/.

#include "hand/paper/shape.hpp"
#include "hand/paper/solve_pair.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace gusset {

// What is left to be found, as equations in numbers.
struct OpenRow {
    EquationKind axis = EquationKind::SumX;
    double constant = 0;
    std::vector<std::pair<std::size_t, double>> factors{}; // of unknowns, by number
};
struct OpenSums {
    std::vector<Symbol> unknowns;
    std::vector<std::vector<OpenRow>> rows;     // of each joint, two at most
    std::vector<std::vector<JointId>> jointsOf; // of each unknown: where it acts
};
[[nodiscard]] OpenSums openSums(const Sheet&);

// The shortest walk with one letter, or else with two; none if there is neither.
[[nodiscard]] std::optional<LetterWalk> findWalk(const OpenSums&);

// What a joint of the walk gives, and by which of its sums.
struct WalkedJoint {
    JointId joint;
    std::vector<std::size_t> gives{}; // unknowns, two at most
    std::vector<EquationKind> by{};
    std::vector<EquationKind> spare{}; // sums that hold nothing but letters then
};
// What a walk comes to.
struct WalkedForms {
    std::vector<WalkedJoint> joints;
    std::vector<std::optional<LinearForm>> forms; // of each unknown that it reaches
    std::array<double, 2> letters{};
};
[[nodiscard]] WalkedForms walked(const OpenSums&, const LetterWalk&);

} // namespace gusset
