// How the supports hold each joint; see stiffness.hpp.
#include "statics/equilibrium/stiffness.hpp"

#include "core/tolerance.hpp"
#include "phrases/results/unsolved.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

// Where the supports of a joint leave no freedom: the displacement imposed by two of them.
Vec2 imposed(const Restraint& one, const Restraint& two) {
    const double determinant = cross(one.along, two.along);
    return {(one.settle * two.along.y - two.settle * one.along.y) / determinant,
            (two.settle * one.along.x - one.settle * two.along.x) / determinant};
}

// Adds one more restraint to the hold of its joint.
void add(const Restraint& restraint, const Restraint*& first, HeldJoint& hold) {
    if (!first) {
        first = &restraint;
        hold.first = restraint.along;
        hold.firstHeld = true;
        hold.settled = restraint.settle * restraint.along;
        return;
    }
    if (hold.secondHeld || std::abs(cross(first->along, restraint.along)) <= kParallel) {
        return;
    }
    hold.first = {1, 0};
    hold.secondHeld = true;
    hold.settled = imposed(*first, restraint);
}

bool agrees(const Restraint& restraint, const HeldJoint& hold, double extent) {
    const double scale = std::max(extent, std::abs(restraint.settle));
    return std::abs(dot(hold.settled, restraint.along) - restraint.settle) <= kSameSpot * scale;
}

// Σ d·dᵀ over the directions d of the restraints of a joint, with entries a, b; b, c. In Wide, as
// the determinant nearly cancels when two directions almost coincide.
struct Gram {
    Wide a;
    Wide b;
    Wide c;
};

} // namespace

std::vector<Vec2> reactionSharesOf(const Structure& structure,
                                   const std::vector<HeldJoint>& holds) {
    std::vector<Gram> grams(structure.joints.size());
    for (const Restraint& restraint : structure.restraints) {
        const WideVec d = restraint.along;
        Gram& gram = grams[restraint.joint.at()];
        gram.a += d.x * d.x;
        gram.b += d.x * d.y;
        gram.c += d.y * d.y;
    }
    std::vector<Vec2> shares;
    shares.reserve(structure.restraints.size());
    for (const Restraint& restraint : structure.restraints) {
        const Gram& gram = grams[restraint.joint.at()];
        const WideVec d = restraint.along;
        if (holds[restraint.joint.at()].secondHeld) {
            const Wide determinant = gram.a * gram.c - gram.b * gram.b;
            shares.push_back(narrow(WideVec((gram.c * d.x - gram.b * d.y) / determinant,
                                            (gram.a * d.y - gram.b * d.x) / determinant)));
        } else { // all in one direction
            shares.push_back(narrow(WideVec(d.x / (gram.a + gram.c), d.y / (gram.a + gram.c))));
        }
    }
    return shares;
}

Outcome<std::vector<HeldJoint>> heldJointsOf(const Truss& truss, const Structure& structure) {
    std::vector<HeldJoint> holds(structure.joints.size());
    std::vector<const Restraint*> first(structure.joints.size(), nullptr);
    for (const Restraint& restraint : structure.restraints) {
        add(restraint, first[restraint.joint.at()], holds[restraint.joint.at()]);
    }
    Issues issues;
    for (const Restraint& restraint : structure.restraints) {
        if (agrees(restraint, holds[restraint.joint.at()], structure.extent)) {
            continue;
        }
        issues.push_back({IssueCode::OutOfRange,
                          "supports[" + std::to_string(restraint.support.index) + "].settle",
                          statement(phrase::kSettlementsContradict,
                                    {{"joint", truss.joints[restraint.joint.at()].label}})});
    }
    if (!issues.empty()) {
        return issues;
    }
    return holds;
}

} // namespace gusset
