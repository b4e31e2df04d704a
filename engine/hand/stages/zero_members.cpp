// Zero-force members, found joint by joint by inspection without writing an equation. Each rule is
// the sum of forces across a line that contains all forces of the joint but one. Repeated, as one
// zero-force member may make the next joint simple.

#include "hand/paper/stages.hpp"
#include "phrases/remarks.hpp"

#include <algorithm>

namespace gusset {
namespace {

struct Reading {
    ZeroRule rule = ZeroRule::None;
    std::vector<MemberId> idle;
    std::vector<Vec2> used; // directions in which equilibrium was used
};

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

Reading readOne(const Sheet& sheet, JointId joint, MemberId member) {
    const Vec2 along = awayFrom(sheet, joint, member);
    return {ZeroRule::LoneMember, {member}, {along, across(along)}};
}

Reading readTwo(const Sheet& sheet, JointId joint, const std::vector<MemberId>& members,
                const std::vector<Vec2>& outside) {
    const Vec2 first = awayFrom(sheet, joint, members[0]);
    const Vec2 second = awayFrom(sheet, joint, members[1]);
    if (parallel(first, second)) {
        return {};
    }
    if (outside.empty()) {
        return {ZeroRule::TwoMembersNoLoad, members, {first, across(first)}};
    }
    const auto allAlong = [&](Vec2 line) {
        for (const Vec2 force : outside) {
            if (!parallel(force, line)) {
                return false;
            }
        }
        return true;
    };
    if (allAlong(first)) {
        return {ZeroRule::LoadAlongOne, {members[1], members[0]}, {across(first)}};
    }
    if (allAlong(second)) {
        return {ZeroRule::LoadAlongOne, {members[0], members[1]}, {across(second)}};
    }
    return {};
}

Reading readThree(const Sheet& sheet, JointId joint, const std::vector<MemberId>& members) {
    for (std::size_t i = 0; i < 3; ++i) {
        const MemberId odd = members[i];
        const MemberId one = members[(i + 1) % 3];
        const MemberId other = members[(i + 2) % 3];
        const Vec2 line = awayFrom(sheet, joint, one);
        if (parallel(line, awayFrom(sheet, joint, other)) &&
            !parallel(line, awayFrom(sheet, joint, odd))) {
            return {ZeroRule::ThreeMembersTwoInLine, {odd, one, other}, {across(line)}};
        }
    }
    return {};
}

Reading readJoint(const Sheet& sheet, JointId joint) {
    const auto outside = outsideForces(sheet, joint);
    const auto members = workingMembers(sheet, joint);
    if (members.size() == 1 && outside.empty()) {
        return readOne(sheet, joint, members.front());
    }
    if (members.size() == 2) {
        return readTwo(sheet, joint, members, outside);
    }
    if (members.size() == 3 && outside.empty()) {
        return readThree(sheet, joint, members);
    }
    return {};
}

std::size_t idleCount(ZeroRule rule) { return rule == ZeroRule::TwoMembersNoLoad ? 2 : 1; }

bool writeIdle(Sheet& sheet, JointId joint) {
    const Reading reading = readJoint(sheet, joint);
    if (reading.rule == ZeroRule::None) {
        return false;
    }
    Step step;
    step.kind = StepKind::ZeroByRule;
    step.joint = joint;
    step.body = {joint};
    step.rule = reading.rule;
    step.members = reading.idle;
    for (std::size_t i = 0; i < idleCount(reading.rule); ++i) {
        if (!sheet.forces[reading.idle[i].at()]) {
            step.found.push_back(record(sheet, forceSymbol(reading.idle[i]), 0));
        }
    }
    for (const Acting& zero : bodyOf(sheet, {joint}).zeros) {
        const bool here = std::any_of(step.found.begin(), step.found.end(),
                                      [&](const Found& f) { return f.symbol == zero.symbol; });
        if (!here) {
            step.uses.push_back(zero.symbol);
        }
    }
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
