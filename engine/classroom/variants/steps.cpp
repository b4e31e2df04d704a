#include "classroom/variants/steps.hpp"

#include "hand/paper/working.hpp"

#include <algorithm>
#include <cstdlib>
#include <utility>
#include <vector>

namespace gusset {

namespace {

bool solvesTogether(StepKind kind) {
    return kind == StepKind::ReactionPair || kind == StepKind::JointPair ||
           kind == StepKind::Simultaneous;
}

// Joints that a symbol's value was carried through.
class Chains {
public:
    void add(const Step& step) {
        int length = 0;
        for (const Symbol& symbol : step.uses) {
            length = std::max(length, lengthOf(symbol, step.joint));
        }
        length += step.joint.valid() ? 1 : 0;
        for (const Found& found : step.found) {
            found_.push_back({found.symbol, step.joint, length});
        }
        longest_ = std::max(longest_, step.found.empty() ? 0 : length);
    }
    [[nodiscard]] int longest() const { return longest_; }

private:
    struct Link {
        Symbol symbol;
        JointId joint;
        int length = 0;
    };

    // The second equation of a joint does not make the chain longer.
    [[nodiscard]] int lengthOf(const Symbol& symbol, JointId joint) const {
        const auto link = std::find_if(found_.begin(), found_.end(), [&](const Link& candidate) {
            return candidate.symbol == symbol;
        });
        if (link == found_.end()) {
            return 0;
        }
        return joint.valid() && link->joint == joint ? link->length - 1 : link->length;
    }

    std::vector<Link> found_;
    int longest_ = 0;
};

bool isInclined(const Truss& truss, MemberId member) {
    const Vec2 d = memberVector(truss, member);
    return d.x != 0 && d.y != 0;
}

bool isNear(int a, int b, int most) { return std::abs(a - b) <= most; }

} // namespace

StepsOf stepsOf(const Truss& truss, const LoadChoice& loads, const ExactSolution& exact) {
    StepsOf count;
    Chains chains;
    const Working working = workOut(truss, loads, solve(truss, loads));
    for (const Step& step : working.steps) {
        chains.add(step);
        count.steps += step.found.empty() || step.kind == StepKind::Summary ? 0 : 1;
        count.couplings += solvesTogether(step.kind) ? 1 : 0;
    }
    count.chain = chains.longest();
    for (std::size_t i = 0; i < exact.forces.size(); ++i) {
        const bool isZero = exact.forces[i].numerator == "0";
        count.zeros += isZero ? 1 : 0;
        const bool counts = !isZero && isInclined(truss, MemberId{static_cast<int>(i)});
        count.inclined += counts ? 1 : 0;
    }
    return count;
}

bool areAlike(const StepsOf& a, const StepsOf& b) {
    const int more = std::max(2, b.steps / 5); // a zero member more is a step less
    return isNear(a.steps, b.steps, more) && isNear(a.chain, b.chain, 2) &&
           isNear(a.couplings, b.couplings, 1) && isNear(a.zeros, b.zeros, 2) &&
           isNear(a.inclined, b.inclined, 2);
}

} // namespace gusset
