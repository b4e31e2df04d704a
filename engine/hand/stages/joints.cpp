// The method of joints: the next joint has at most two unknowns, preferably each alone in an
// equation, and is near the previous joint. A joint is re-examined when one of its unknowns becomes
// known, and a tree finds the nearest one: n log n in total.

#include "core/tolerance.hpp"
#include "hand/paper/isolate.hpp"
#include "hand/paper/nearest_joints.hpp"
#include "hand/paper/solve_pair.hpp"
#include "hand/paper/stages.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <tuple>
#include <utility>

namespace gusset {
namespace {

// A direction as the sums of a joint show it: a negligible component is not written.
Vec2 asWritten(Vec2 along) {
    return {std::fabs(along.x) <= kParallel ? 0 : along.x,
            std::fabs(along.y) <= kParallel ? 0 : along.y};
}

// Two unknowns must differ in direction, also in the sums as written: where both deviate only
// negligibly from horizontal, to either side, the vertical sum holds neither.
bool settles(const Body& body) {
    if (body.unknowns.size() != 2) {
        return body.unknowns.size() == 1;
    }
    const Vec2 first = body.unknowns[0].along;
    const Vec2 second = body.unknowns[1].along;
    return !parallel(first, second) && !parallel(asWritten(first), asWritten(second));
}

// The component of a force along an axis; nothing if the force does not enter its sum.
double weightIn(const Acting& force, EquationKind axis) {
    const double part = std::fabs(axis == EquationKind::SumX ? force.along.x : force.along.y);
    return part <= kParallel ? 0 : part;
}

// The component of the only unknown in an axis sum; nothing if there is none or more than one.
double weightAlone(const Body& body, EquationKind axis) {
    double weight = 0;
    for (const Acting& force : body.unknowns) {
        const double part = weightIn(force, axis);
        if (part > 0 && weight > 0) {
            return 0;
        }
        weight += part;
    }
    return weight;
}

// Whether one axis sum holds only one of the two unknowns.
bool hasEasyStart(const Body& body) {
    return weightAlone(body, EquationKind::SumX) > 0 || weightAlone(body, EquationKind::SumY) > 0;
}

// The preference among joints that can be taken, in this order: in the half that is worked, without
// simultaneous equations, with one unknown.
int kindOf(const Sheet& sheet, JointId joint) {
    const std::size_t unknowns = unknownsAt(sheet, joint); // faster than bodyOf
    if (unknowns == 0 || unknowns > 2) {
        return NearestJoints::kNone;
    }
    const Body body = bodyOf(sheet, {joint});
    if (!settles(body)) {
        return NearestJoints::kNone;
    }
    return (onFarSide(sheet, joint) ? 4 : 0) + (hasEasyStart(body) ? 0 : 2) +
           static_cast<int>(unknowns - 1);
}

} // namespace

// A joint's kind changes only when one of its unknowns becomes known.
struct ReadyJoints {
    NearestJoints joints;
    std::size_t seen = 0; // of what the sheet has found
};

namespace {

std::shared_ptr<ReadyJoints> readyJointsOf(const Sheet& sheet) {
    std::vector<Vec2> at;
    for (const Joint& joint : sheet.truss.joints) {
        at.push_back(joint.at);
    }
    auto ready = std::make_shared<ReadyJoints>(
        ReadyJoints{NearestJoints(std::move(at)), sheet.order.size()});
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        ready->joints.put(joint, kindOf(sheet, joint));
    }
    return ready;
}

void bringUpToDate(const Sheet& sheet, ReadyJoints& ready) {
    for (; ready.seen < sheet.order.size(); ++ready.seen) {
        const Symbol& symbol = sheet.order[ready.seen];
        if (symbol.kind == SymbolKind::Reaction) {
            ready.joints.put(symbol.joint, kindOf(sheet, symbol.joint));
            continue;
        }
        const Member& member = sheet.truss.members[symbol.member.at()];
        ready.joints.put(member.a, kindOf(sheet, member.a));
        ready.joints.put(member.b, kindOf(sheet, member.b));
    }
}

// Of two kinds, near the last joint: joints connected to it by a member come first, then those with
// fewer unknowns, then the nearest.
JointId nextToLast(const Sheet& sheet, const NearestJoints& ready, int kind) {
    const auto score = [&](JointId joint) {
        const double distance = length(positionOf(sheet, joint) - positionOf(sheet, sheet.last));
        return std::tuple(ready.kindOf(joint), distance, joint);
    };
    JointId best;
    for (const MemberId member : membersAt(sheet, sheet.last)) {
        const JointId joint = otherEnd(sheet, sheet.last, member);
        const bool fits = ready.kindOf(joint) == kind || ready.kindOf(joint) == kind + 1;
        if (fits && (!best.valid() || score(joint) < score(best))) {
            best = joint;
        }
    }
    if (best.valid()) {
        return best;
    }
    const Vec2 from = positionOf(sheet, sheet.last);
    return ready.nearest(from, ready.has(kind) ? kind : kind + 1);
}

// The first of two kinds: by fewer unknowns, then in joint order.
JointId firstOf(const Sheet& sheet, const NearestJoints& ready, int kind) {
    const int fewest = ready.has(kind) ? kind : kind + 1;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        if (ready.kindOf({static_cast<int>(i)}) == fewest) {
            return {static_cast<int>(i)};
        }
    }
    return {};
}

// The next of the joints that are wanted first, if there is one and it is ready.
JointId nextWanted(Sheet& sheet, const NearestJoints& ready) {
    while (!sheet.wanted.empty()) {
        const JointId joint = sheet.wanted.back();
        sheet.wanted.pop_back();
        if (ready.kindOf(joint) != NearestJoints::kNone) {
            return joint;
        }
        const Body body = bodyOf(sheet, {joint});
        if (!body.unknowns.empty() && !sheet.outOfTurn) {
            sheet.outOfTurn = OutOfTurn{joint, symbolsOf(body.unknowns)};
        }
    }
    return {};
}

std::optional<Body> chooseJoint(Sheet& sheet) {
    if (!sheet.ready) {
        sheet.ready = readyJointsOf(sheet);
    }
    bringUpToDate(sheet, *sheet.ready);
    const NearestJoints& ready = sheet.ready->joints;
    if (const JointId wanted = nextWanted(sheet, ready); wanted.valid()) {
        return bodyOf(sheet, {wanted});
    }
    for (int kind = 0; kind < NearestJoints::kKinds; kind += 2) {
        if (ready.has(kind) || ready.has(kind + 1)) {
            const JointId joint =
                sheet.last.valid() ? nextToLast(sheet, ready, kind) : firstOf(sheet, ready, kind);
            return bodyOf(sheet, {joint});
        }
    }
    return std::nullopt;
}

Step stepAt(StepKind kind, const Body& body) {
    Step step;
    step.kind = kind;
    step.joint = body.joints.front();
    step.body = body.joints;
    return step;
}

void writeIntro(Sheet& sheet, const Body& body) {
    Step step = stepAt(StepKind::JointIntro, body);
    const std::vector<Symbol> unknowns = symbolsOf(body.unknowns);
    for (const Acting& force : body.unknowns) {
        if (force.symbol.kind == SymbolKind::Reaction) {
            step.restraints.push_back(force.symbol.restraint);
        } else {
            step.members.push_back(force.symbol.member);
        }
    }
    step.remarks.push_back(unknowns.size() == 1
                               ? remarkThat(phrase::kJointOneUnknown, {{"unknown", unknowns}})
                               : remarkThat(phrase::kJointTwoUnknowns, {{"unknowns", unknowns}}));
    noteAssumed(sheet, step);
    sheet.steps.push_back(std::move(step));
}

Vec2 directionOfSum(EquationKind kind) {
    return kind == EquationKind::SumX ? Vec2{1, 0} : Vec2{0, 1};
}

void writeOne(Sheet& sheet, const Body& body, EquationKind kind) {
    Step step = stepAt(StepKind::JointEquation, body);
    Equation equation = withGuess(sheet, body, sumOf(sheet, body, kind));
    noteUses(sheet, body, equation, step);
    step.found.push_back(solveFor(sheet, equation));
    step.equations.push_back(std::move(equation));
    markUsed(sheet, step.joint, directionOfSum(kind));
    noteFound(sheet, step);
    sheet.steps.push_back(std::move(step));
}

// The axis whose equation holds one unknown; of two, the one in which its component is larger.
std::optional<EquationKind> easyAxis(const Body& body) {
    const double upright = weightAlone(body, EquationKind::SumY);
    const double level = weightAlone(body, EquationKind::SumX);
    // At 45°, rounding must not make the horizontal sum preferred.
    if (level > 1.001 * upright) {
        return EquationKind::SumX;
    }
    return upright > 0 ? std::optional(EquationKind::SumY) : std::nullopt;
}

// If an unknown is in line with a known force of the joint, the sum across this line holds only the
// other unknown. Returns that other one.
std::optional<Symbol> aloneAcross(const Body& body) {
    for (std::size_t i = 0; i < 2; ++i) {
        const Vec2 line = body.unknowns[i].along;
        const bool inLine =
            std::any_of(body.knowns.begin(), body.knowns.end(),
                        [&](const Acting& force) { return parallel(force.along, line); });
        if (inLine) {
            return body.unknowns[1 - i].symbol;
        }
    }
    return std::nullopt;
}

bool writeAcross(Sheet& sheet, const Body& body) {
    const auto alone = body.unknowns.size() == 2 ? aloneAcross(body) : std::nullopt;
    auto isolation = alone ? isolateAcross(sheet, body, *alone) : std::nullopt;
    if (!isolation) {
        return false;
    }
    Step step = stepAt(StepKind::JointEquation, body);
    step.remarks.push_back(isolation->remark);
    step.remarks.insert(step.remarks.end(), isolation->details.begin(), isolation->details.end());
    isolation->equation = withGuess(sheet, body, isolation->equation);
    noteUses(sheet, body, isolation->equation, step);
    step.found.push_back(solveFor(sheet, isolation->equation));
    step.equations.push_back(isolation->equation);
    markUsed(sheet, step.joint, isolation->equation.along);
    noteFound(sheet, step);
    sheet.steps.push_back(std::move(step));
    return true;
}

void writePair(Sheet& sheet, const Body& body) {
    Step step = stepAt(StepKind::JointPair, body);
    const std::vector<Symbol> unknowns{body.unknowns[0].symbol, body.unknowns[1].symbol};
    step.remarks.push_back(remarkThat(phrase::kBothInclined, {{"unknowns", unknowns}}));
    step.equations = {sumOf(sheet, body, EquationKind::SumX),
                      sumOf(sheet, body, EquationKind::SumY)};
    for (const Equation& equation : step.equations) {
        noteUses(sheet, body, equation, step);
    }
    const bool solved = solvePairOf(sheet, step, unknowns);
    assert(solved && "two unknowns that are not parallel");
    (void)solved;
    markUsed(sheet, step.joint, {1, 0});
    markUsed(sheet, step.joint, {0, 1});
    noteFound(sheet, step);
    sheet.steps.push_back(std::move(step));
}

} // namespace

bool writeNextJoint(Sheet& sheet) {
    std::optional<Body> body = chooseJoint(sheet);
    if (!body) {
        return false;
    }
    writeIntro(sheet, *body);
    while (!body->unknowns.empty()) {
        const auto axis = easyAxis(*body);
        if (axis) {
            writeOne(sheet, *body, *axis);
        } else if (!writeAcross(sheet, *body)) {
            writePair(sheet, *body);
        }
        body = bodyOf(sheet, body->joints);
    }
    sheet.last = body->joints.front();
    return true;
}

} // namespace gusset
