// Several equations together, when no joint has few enough unknowns. With letters, if there is such
// a walk (hand/stages/letter_walk); else the smallest group of joints found whose equations
// determine all their unknowns. A group is grown from every joint in turn, always by the joint that
// adds the fewest unknowns relative to its equations; these numbers are updated as the group grows,
// and a heap gives the best joint (J. W. J. Williams, Algorithm 232, Comm. ACM 7 (1964)), so that
// all groups together take n² log n steps.

#include "hand/paper/equation_system.hpp"
#include "hand/paper/shape.hpp"
#include "hand/paper/stages.hpp"
#include "hand/stages/letter_walk.hpp"
#include "hand/stages/write_walk.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <queue>
#include <tuple>

namespace gusset {
namespace {

struct OpenJoint {
    std::vector<Symbol> unknowns;
    std::vector<int> numbers; // of these unknowns, among all
    int equations = 0;
};

// What is not yet found on the sheet.
struct Open {
    std::vector<OpenJoint> joints;
    std::vector<std::vector<JointId>> jointsOf; // for each unknown, by its number
    std::vector<JointId> order;                 // joints with equations, by unknowns less equations
};

int broughtAlone(const OpenJoint& joint) {
    return static_cast<int>(joint.unknowns.size()) - joint.equations;
}

Open openOf(const Sheet& sheet) {
    Open open;
    open.joints.resize(sheet.truss.joints.size());
    open.jointsOf.resize(sheet.forces.size() + sheet.reactions.size());
    for (std::size_t i = 0; i < open.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        OpenJoint& one = open.joints[i];
        if (unknownsAt(sheet, joint) == 0) {
            continue;
        }
        for (const Acting& force : bodyOf(sheet, {joint}).unknowns) {
            const bool isReaction = force.symbol.kind == SymbolKind::Reaction;
            const std::size_t number = isReaction
                                           ? sheet.forces.size() + force.symbol.restraint.at()
                                           : force.symbol.member.at();
            one.unknowns.push_back(force.symbol);
            one.numbers.push_back(static_cast<int>(number));
            open.jointsOf[number].push_back(joint);
        }
        one.equations = static_cast<int>(unusedAxes(sheet, joint).size());
        if (one.equations > 0) {
            open.order.push_back(joint);
        }
    }
    std::stable_sort(open.order.begin(), open.order.end(), [&](JointId a, JointId b) {
        return broughtAlone(open.joints[a.at()]) < broughtAlone(open.joints[b.at()]);
    });
    return open;
}

// A growing group of joints, which compares its numbers of equations and unknowns.
class Group {
public:
    explicit Group(const Open& open)
        : open_(open), inside_(open.joints.size()), counted_(open.jointsOf.size()),
          fresh_(open.joints.size()) {
        for (std::size_t i = 0; i < fresh_.size(); ++i) {
            fresh_[i] = static_cast<int>(open.joints[i].unknowns.size());
        }
    }

    // Restarts from one joint.
    void start(JointId joint) {
        for (const JointId one : joints_) {
            inside_[one.at()] = false;
        }
        for (const int number : numbers_) {
            const auto at = static_cast<std::size_t>(number);
            counted_[at] = false;
            for (const JointId one : open_.jointsOf[at]) {
                ++fresh_[one.at()];
            }
        }
        joints_.clear();
        unknowns_.clear();
        numbers_.clear();
        equations_ = 0;
        apart_ = 0;
        near_ = {};
        join(joint);
    }

    // Adds the joint with the fewest new unknowns relative to its equations, among those that share
    // an unknown with the group if there are any; false if none is left.
    bool grow() {
        while (!near_.empty()) {
            const Near next = near_.top();
            near_.pop();
            if (!inside_[next.joint.at()] && next.brings == brings(next.joint)) {
                join(next.joint);
                return true;
            }
        }
        for (; apart_ < open_.order.size(); ++apart_) {
            if (!inside_[open_.order[apart_].at()]) {
                join(open_.order[apart_]);
                return true;
            }
        }
        return false;
    }

    [[nodiscard]] bool balanced() const {
        return !unknowns_.empty() && equations_ >= static_cast<int>(unknowns_.size());
    }
    [[nodiscard]] const std::vector<JointId>& joints() const { return joints_; }
    [[nodiscard]] const std::vector<Symbol>& unknowns() const { return unknowns_; }

private:
    struct Near {
        int brings;
        JointId joint;
        bool operator<(const Near& other) const { // the best one on top
            return std::tie(brings, joint) > std::tie(other.brings, other.joint);
        }
    };

    [[nodiscard]] int brings(JointId joint) const {
        return fresh_[joint.at()] - open_.joints[joint.at()].equations;
    }

    void join(JointId joint) {
        const OpenJoint& open = open_.joints[joint.at()];
        inside_[joint.at()] = true;
        joints_.push_back(joint);
        equations_ += open.equations;
        for (std::size_t i = 0; i < open.numbers.size(); ++i) {
            const auto number = static_cast<std::size_t>(open.numbers[i]);
            if (counted_[number]) {
                continue;
            }
            counted_[number] = true;
            unknowns_.push_back(open.unknowns[i]);
            numbers_.push_back(open.numbers[i]);
            for (const JointId other : open_.jointsOf[number]) {
                --fresh_[other.at()];
                if (!inside_[other.at()] && open_.joints[other.at()].equations > 0) {
                    near_.push({brings(other), other});
                }
            }
        }
    }

    const Open& open_;
    std::vector<bool> inside_;  // by joint
    std::vector<bool> counted_; // by number of the unknown: it acts on a joint inside
    std::vector<int> fresh_;    // for each joint, the number of its unknowns not counted yet
    std::vector<JointId> joints_;
    std::vector<Symbol> unknowns_;
    std::vector<int> numbers_;
    int equations_ = 0;
    std::size_t apart_ = 0; // in `order`: all joints before it are inside
    std::priority_queue<Near> near_;
};

std::vector<Equation> equationsOf(const Sheet& sheet, const std::vector<JointId>& joints) {
    std::vector<Equation> equations;
    for (const JointId joint : joints) {
        const Body body = bodyOf(sheet, {joint});
        for (const EquationKind kind : unusedAxes(sheet, joint)) {
            equations.push_back(sumOf(sheet, body, kind));
            equations.back().about = joint;
        }
    }
    return equations;
}

bool settled(const Sheet& sheet, const Group& group) {
    return EquationSystem(equationsOf(sheet, group.joints()), group.unknowns()).settled();
}

// Grows until the equations determine their unknowns; false when they don't with at most `most`
// joints.
bool growUntilSettled(const Sheet& sheet, Group& group, std::size_t most) {
    while (!(group.balanced() && settled(sheet, group))) {
        if (group.joints().size() >= most || !group.grow()) {
            return false;
        }
    }
    return true;
}

std::optional<Together> findSmallestGroup(const Sheet& sheet) {
    const Open open = openOf(sheet);
    Group group(open);
    std::optional<Together> best;
    std::size_t most = open.joints.size();
    for (std::size_t i = 0; i < open.joints.size() && most > 0; ++i) {
        if (open.joints[i].equations == 0) {
            continue;
        }
        group.start({static_cast<int>(i)});
        if (growUntilSettled(sheet, group, most)) {
            best = {group.joints(), group.unknowns()};
            most = best->joints.size() - 1; // only a smaller group would be better
        }
    }
    return best;
}

// Everything that the choice of a group depends on besides the shape: which forces and reactions
// are open, and which equations. The known values do not matter.
std::vector<bool> whatIsOpen(const Sheet& sheet) {
    std::vector<bool> open;
    open.reserve(sheet.forces.size() + sheet.reactions.size() + 2 * sheet.used.size());
    for (const auto* values : {&sheet.forces, &sheet.reactions}) {
        for (const std::optional<double>& value : *values) {
            open.push_back(!value.has_value());
        }
    }
    for (std::size_t i = 0; i < sheet.used.size(); ++i) {
        const auto axes = unusedAxes(sheet, {static_cast<int>(i)});
        for (const EquationKind axis : {EquationKind::SumX, EquationKind::SumY}) {
            open.push_back(std::find(axes.begin(), axes.end(), axis) != axes.end());
        }
    }
    return open;
}

// Cached, as many load cases on one truss leave the same unknowns open.
const std::optional<Together>& smallestGroup(const Sheet& sheet) {
    const auto [place, isNew] = sheet.shape->together.try_emplace(whatIsOpen(sheet));
    if (isNew) {
        place->second = findSmallestGroup(sheet);
    }
    return place->second;
}

// As many independent equations as there are unknowns.
std::vector<Equation> independent(const std::vector<Equation>& equations,
                                  const std::vector<Symbol>& unknowns) {
    std::vector<Equation> chosen;
    for (const std::size_t row : EquationSystem(equations, unknowns).independent()) {
        chosen.push_back(equations[row]);
    }
    return chosen;
}

Remark whyTogether(const Step& step, const std::vector<Symbol>& unknowns) {
    const int n = static_cast<int>(step.equations.size());
    return step.body.size() == 1
               ? remarkThat(phrase::kSimultaneousOne,
                            {{"joint", step.body.front()}, {"n", n}, {"unknowns", unknowns}})
               : remarkThat(phrase::kSimultaneous,
                            {{"joints", step.body}, {"n", n}, {"unknowns", unknowns}});
}

} // namespace

bool solveTogether(Sheet& sheet, std::vector<Equation>& equations,
                   const std::vector<Symbol>& unknowns, std::vector<Found>& found) {
    const EquationSystem system(equations, unknowns);
    const auto values = system.solution();
    if (!values) {
        return false;
    }
    std::vector<double> written; // the value of each unknown in the equations
    for (std::size_t i = 0; i < unknowns.size(); ++i) {
        const int drawn = drawnSense(sheet, unknowns[i]);
        found.push_back(record(sheet, unknowns[i], drawn * (*values)[i]));
        written.push_back(drawn * found.back().value);
    }
    for (Equation& equation : equations) {
        for (const Symbol& symbol : unknownsOf(equation)) {
            if (const int column = system.columnOf(symbol); column >= 0) {
                putValue(equation, symbol, written[static_cast<std::size_t>(column)]);
            }
        }
    }
    return true;
}

namespace {

const std::optional<LetterWalk>& walkWithLetters(const Sheet& sheet) {
    const auto [place, isNew] = sheet.shape->walks.try_emplace(whatIsOpen(sheet));
    if (isNew) {
        place->second = findWalk(openSums(sheet));
    }
    return place->second;
}

} // namespace

bool writeLetters(Sheet& sheet) {
    const std::optional<LetterWalk>& walk = walkWithLetters(sheet);
    if (walk) {
        writeWalk(sheet, *walk);
    }
    return walk.has_value();
}

bool writeSimultaneous(Sheet& sheet) {
    const std::optional<Together>& group = smallestGroup(sheet);
    if (!group) {
        return false;
    }
    Step step;
    step.kind = StepKind::Simultaneous;
    step.body = group->joints;
    step.equations = independent(equationsOf(sheet, group->joints), group->unknowns);
    step.remarks.push_back(remarkThat(phrase::kNoEasyJoint));
    step.remarks.push_back(remarkThat(phrase::kNoEasySection));
    step.remarks.push_back(whyTogether(step, group->unknowns));
    noteAssumed(sheet, step);
    for (const Equation& equation : step.equations) {
        noteUses(sheet, bodyOf(sheet, {equation.about}), equation, step);
    }
    const bool solved = group->unknowns.size() == 2
                            ? solvePairOf(sheet, step, group->unknowns)
                            : solveTogether(sheet, step.equations, group->unknowns, step.found);
    if (!solved) {
        return false;
    }
    noteFound(sheet, step);
    for (const Equation& equation : step.equations) {
        markUsed(sheet, equation.about,
                 equation.kind == EquationKind::SumX ? Vec2{1, 0} : Vec2{0, 1});
    }
    sheet.last = group->joints.back();
    sheet.steps.push_back(step);
    return true;
}

} // namespace gusset
