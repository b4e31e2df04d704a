// Zero-force members, found joint by joint by inspection without writing an equation. Each rule is
// the sum of forces across a line that contains all forces of the joint but one. Repeated, as one
// zero-force member may make the next joint simple.

#include "hand/paper/stages.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>

namespace gusset {
namespace {

struct Reading {
    std::vector<MemberId> idle; // none: no rule applies
    std::vector<MemberId> seen; // the others that the rule names
    std::vector<Vec2> used;     // directions in which equilibrium was used
    Remark why;
};
using MemberNames = std::vector<MemberId>;

Vec2 across(Vec2 unit) { return {-unit.y, unit.x}; }

// Directions of everything else, given or known, that acts at a joint besides its members.
std::vector<Vec2> outsideForces(const Sheet& sheet, JointId joint) {
    std::vector<Vec2> lines;
    if (hasLoad(sheet, joint)) {
        const Vec2 load = sheet.loads[joint.at()];
        lines.push_back((1 / length(load)) * load);
    }
    for (const RestraintId restraint : sheet.restraintsOf[joint.at()]) {
        if (sheet.reactions[restraint.at()].value_or(1) != 0) {
            lines.push_back(sheet.structure.restraints[restraint.at()].along);
        }
    }
    return lines;
}

// Members whose force may be nonzero, and whether any is known to be.
std::vector<MemberId> workingMembers(const Sheet& sheet, JointId joint) {
    std::vector<MemberId> members;
    for (const MemberId member : membersAt(sheet, joint)) {
        if (sheet.forces[member.at()].value_or(1) != 0) {
            members.push_back(member);
        }
    }
    return members;
}

// What is known to be zero at a joint is left out by a person too, and named first.
class RuleReader {
public:
    RuleReader(const Sheet& sheet, JointId joint, bool leavesOut)
        : sheet_(sheet), joint_(joint), leavesOut_(leavesOut) {}

    [[nodiscard]] Reading one(MemberId member) const {
        const Vec2 along = awayFrom(sheet_, joint_, member);
        return {{member},
                {},
                {along, across(along)},
                remarkThat(phrase::kIdleLone, {{"joint", joint_}, {"idle", MemberNames{member}}})};
    }

    [[nodiscard]] Reading two(const MemberNames& members, const std::vector<Vec2>& outside) const {
        const Vec2 first = awayFrom(sheet_, joint_, members[0]);
        const Vec2 second = awayFrom(sheet_, joint_, members[1]);
        if (parallel(first, second)) {
            return {};
        }
        if (outside.empty()) {
            return {members, {}, {first, across(first)}, whyBoth(members[0], members[1])};
        }
        const auto allAlong = [&](Vec2 line) {
            return std::all_of(outside.begin(), outside.end(),
                               [&](Vec2 force) { return parallel(force, line); });
        };
        if (allAlong(first)) {
            return besideLoad(members[1], members[0], first);
        }
        return allAlong(second) ? besideLoad(members[0], members[1], second) : Reading{};
    }

    [[nodiscard]] Reading three(const MemberNames& members) const {
        for (std::size_t i = 0; i < 3; ++i) {
            const MemberId odd = members[i];
            const MemberId one = members[(i + 1) % 3];
            const MemberId other = members[(i + 2) % 3];
            const Vec2 line = awayFrom(sheet_, joint_, one);
            if (parallel(line, awayFrom(sheet_, joint_, other)) &&
                !parallel(line, awayFrom(sheet_, joint_, odd))) {
                return {{odd}, {one, other}, {across(line)}, whyThird(odd, one, other)};
            }
        }
        return {};
    }

private:
    [[nodiscard]] Remark whyBoth(MemberId a, MemberId b) const {
        const MemberNames first{a};
        const MemberNames second{b};
        return leavesOut_
                   ? remarkThat(phrase::kIdleTwoLeft, {{"a", first}, {"b", second}})
                   : remarkThat(phrase::kIdleTwo, {{"joint", joint_}, {"a", first}, {"b", second}});
    }
    [[nodiscard]] Remark whyThird(MemberId odd, MemberId a, MemberId b) const {
        const MemberNames idle{odd};
        const MemberNames first{a};
        const MemberNames second{b};
        return leavesOut_
                   ? remarkThat(phrase::kIdleThirdLeft,
                                {{"idle", idle}, {"a", first}, {"b", second}})
                   : remarkThat(phrase::kIdleThird,
                                {{"joint", joint_}, {"idle", idle}, {"a", first}, {"b", second}});
    }
    [[nodiscard]] Reading besideLoad(MemberId odd, MemberId loaded, Vec2 line) const {
        const MemberNames idle{odd};
        const MemberNames along{loaded};
        return {idle,
                along,
                {across(line)},
                leavesOut_ ? remarkThat(phrase::kIdleBesideLoadLeft, {{"idle", idle}, {"a", along}})
                           : remarkThat(phrase::kIdleBesideLoad,
                                        {{"joint", joint_}, {"idle", idle}, {"a", along}})};
    }

    const Sheet& sheet_;
    JointId joint_;
    bool leavesOut_;
};

Reading readJoint(const Sheet& sheet, JointId joint, bool leavesOut) {
    const RuleReader reader(sheet, joint, leavesOut);
    const auto outside = outsideForces(sheet, joint);
    const auto members = workingMembers(sheet, joint);
    if (members.size() == 1 && outside.empty()) {
        return reader.one(members.front());
    }
    if (members.size() == 2) {
        return reader.two(members, outside);
    }
    if (members.size() == 3 && outside.empty()) {
        return reader.three(members);
    }
    return {};
}

Remark thatZeroAlready(JointId joint, const std::vector<Symbol>& zeros) {
    return zeros.size() == 1
               ? remarkThat(phrase::kZeroAlreadyOne, {{"joint", joint}, {"zero", zeros.front()}})
               : remarkThat(phrase::kZeroAlreadyMany, {{"joint", joint}, {"zeros", zeros}});
}

bool writeIdle(Sheet& sheet, JointId joint) {
    Reading reading = readJoint(sheet, joint, false);
    if (reading.idle.empty()) {
        return false;
    }
    const std::vector<Symbol> zeros = symbolsOf(bodyOf(sheet, {joint}).zeros);
    if (!zeros.empty()) {
        reading = readJoint(sheet, joint, true);
    }
    Step step;
    step.kind = StepKind::ZeroByRule;
    step.joint = joint;
    step.body = {joint};
    step.members = reading.idle;
    step.members.insert(step.members.end(), reading.seen.begin(), reading.seen.end());
    for (const MemberId member : reading.idle) {
        step.found.push_back(record(sheet, forceSymbol(member), 0));
    }
    step.uses = zeros;
    if (!zeros.empty()) {
        step.remarks.push_back(thatZeroAlready(joint, zeros));
    }
    step.remarks.push_back(reading.why);
    for (const Vec2 direction : reading.used) {
        markUsed(sheet, joint, direction);
    }
    sheet.steps.push_back(step);
    return true;
}

} // namespace

void writeIdleMembers(Sheet& sheet) {
    bool any = false;
    for (bool again = true; again;) {
        again = false;
        for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
            again = writeIdle(sheet, {static_cast<int>(i)}) || again;
        }
        any = any || again;
    }
    if (!any) {
        Step step;
        step.kind = StepKind::ZeroByRule;
        step.remarks.push_back(remarkThat(phrase::kIdleNone));
        sheet.steps.push_back(step);
    }
}

} // namespace gusset
