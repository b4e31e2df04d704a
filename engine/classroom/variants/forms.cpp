#include "classroom/variants/forms.hpp"

#include "classroom/variants/dice.hpp"
#include "phrases/faults/variants.hpp"
#include "statics/solve/exact.hpp"

#include <algorithm>
#include <cstdlib>

namespace gusset {

namespace {

constexpr int kLoadings = 300; // tried for the wished number of zero members

void addRow(Truss& truss, int count, Vec2 first, double step) {
    for (int i = 0; i < count; ++i) {
        const std::string label = defaultLabel(static_cast<int>(truss.joints.size()));
        truss.joints.push_back({label, {first.x + i * step, first.y}, {}});
    }
}

void addMember(Truss& truss, int a, int b) {
    truss.members.push_back({JointId{a}, JointId{b}, {}, 0, 0, {}});
}

void addChord(Truss& truss, int first, int count) {
    for (int i = first; i + 1 < first + count; ++i) {
        addMember(truss, i, i + 1);
    }
}

void addSupport(Truss& truss, int joint, SupportKind kind, double reaction) {
    Support support;
    support.joint = JointId{joint};
    support.kind = kind;
    support.reaction = reaction;
    truss.supports.push_back(support);
}

// With a post from each of the first top joints to the middle of the panel under it: it carries
// nothing unless its foot is loaded.
Truss triangles(int panels, int idlePosts) {
    Truss truss;
    addRow(truss, panels + 1, {0, 0}, 6);
    addRow(truss, panels, {3, 4}, 6);
    addChord(truss, 0, panels + 1);
    addChord(truss, panels + 1, panels);
    for (int i = 0; i < panels; ++i) {
        addMember(truss, i, panels + 1 + i);
        addMember(truss, panels + 1 + i, i + 1);
    }
    for (int i = 0; i < idlePosts; ++i) {
        const int foot = static_cast<int>(truss.joints.size());
        addRow(truss, 1, {6.0 * i + 3, 0}, 0);
        truss.members[static_cast<std::size_t>(i)].b = JointId{foot}; // of the bottom chord
        addMember(truss, foot, i + 1);
        addMember(truss, panels + 1 + i, foot);
    }
    return truss;
}

// Diagonals that fall to the middle, under a shorter chord.
Truss posts(int panels) {
    Truss truss;
    addRow(truss, panels + 1, {0, 0}, 4);
    addRow(truss, panels - 1, {4, 3}, 4);
    addChord(truss, 0, panels + 1);
    addChord(truss, panels + 1, panels - 1);
    const int above = panels; // of bottom joint i: joint above + i
    addMember(truss, 0, above + 1);
    addMember(truss, panels, above + panels - 1);
    for (int i = 1; i < panels; ++i) {
        addMember(truss, i, above + i);
    }
    for (int i = 1; i + 1 < panels; ++i) {
        const bool falls = 2 * i < panels;
        addMember(truss, falls ? above + i : i, falls ? i + 1 : above + i + 1);
    }
    return truss;
}

Truss bracket(int panels) {
    Truss truss;
    addRow(truss, panels + 1, {0, 0}, 4);
    addRow(truss, panels + 1, {0, 3}, 4);
    addChord(truss, 0, panels + 1);
    addChord(truss, panels + 1, panels + 1);
    for (int i = 0; i <= panels; ++i) {
        addMember(truss, i, panels + 1 + i);
    }
    for (int i = 0; i < panels; ++i) {
        addMember(truss, panels + 1 + i, i + 1);
    }
    return truss;
}

Truss formOf(const FormWishes& wishes) {
    const int panels = wishes.joints / 2;
    if (wishes.held == Held::AtWall) {
        Truss truss = bracket(panels - 1);
        addSupport(truss, 0, SupportKind::Pin, 90);
        addSupport(truss, panels, SupportKind::Roller, 0);
        return truss;
    }
    const int idle = wishes.zeros.value_or(0);
    const bool hasIdlePosts =
        idle > 0 && (wishes.joints - idle) % 2 == 1 && 3 * idle < wishes.joints;
    const int spans = hasIdlePosts ? (wishes.joints - idle) / 2 : panels;
    Truss truss = hasIdlePosts             ? triangles(spans, idle)
                  : wishes.joints % 2 == 1 ? triangles(spans, 0)
                                           : posts(spans);
    addSupport(truss, 0, SupportKind::Pin, 90);
    addSupport(truss, spans, SupportKind::Roller, 90);
    return truss;
}

void throwLoading(Truss& truss, Dice& dice) {
    truss.loads.clear();
    const std::size_t count = 1 + dice.below(3);
    while (truss.loads.size() < count) {
        const JointId joint{static_cast<int>(dice.below(truss.joints.size()))};
        const auto isHeld = [&](const Support& support) { return support.joint == joint; };
        if (std::any_of(truss.supports.begin(), truss.supports.end(), isHeld)) {
            continue;
        }
        const double size = 6 * static_cast<double>(1 + dice.below(3)); // kN
        const auto isLoaded = [&](const Load& load) { return jointOf(load) == joint; };
        if (std::any_of(truss.loads.begin(), truss.loads.end(), isLoaded)) {
            return; // fewer loads: there may be no other joint
        }
        truss.loads.push_back({JointForce{joint, 0, -size}, {}, {}});
    }
}

// Whatever the sizes of the loads: equal ones may cancel in a member, others do not.
int zerosIn(Truss truss) {
    double size = 7;
    for (Load& load : truss.loads) {
        load.what = JointForce{jointOf(load), 0, -size};
        size = 2 * size + 3;
    }
    const ExactSolution exact = solveExactly(truss);
    return static_cast<int>(
        std::count_if(exact.forces.begin(), exact.forces.end(),
                      [](const Surd& force) { return force.numerator == "0"; }));
}

} // namespace

Outcome<Truss> makeForm(const FormWishes& wishes, std::uint64_t seed) {
    if (wishes.joints < kFewestJoints || wishes.joints > kMostJoints) {
        return Issue{
            IssueCode::OutOfRange, "joints",
            statement(phrase::kFormJoints, {{"fewest", kFewestJoints}, {"most", kMostJoints}})};
    }
    if (wishes.held == Held::AtWall && wishes.joints % 2 == 1) {
        return Issue{IssueCode::OutOfRange, "joints",
                     statement(phrase::kBracketIsEven,
                               {{"fewer", wishes.joints - 1}, {"more", wishes.joints + 1}})};
    }
    Truss truss = formOf(wishes);
    Dice dice(seed);
    std::optional<int> nearest;
    for (int i = 0; i < kLoadings; ++i) {
        throwLoading(truss, dice);
        const int zeros = zerosIn(truss);
        if (!wishes.zeros || zeros == *wishes.zeros) {
            return truss;
        }
        if (!nearest || std::abs(zeros - *wishes.zeros) < std::abs(*nearest - *wishes.zeros)) {
            nearest = zeros;
        }
    }
    return Issue{
        IssueCode::OutOfRange, "zero",
        statement(phrase::kBlamesZeros, {{"wished", *wishes.zeros}, {"nearest", *nearest}})};
}

} // namespace gusset
