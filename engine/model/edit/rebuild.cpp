#include "model/edit/rebuild.hpp"

#include "core/tolerance.hpp"
#include "model/edit/removal.hpp"
#include "model/truss/fields.hpp"

#include <algorithm>
#include <iterator>

namespace gusset {

namespace {

// Adds the joint to a chord or a path wherever it runs from one end of the member to the other.
void runThrough(std::vector<JointId>& path, const Member& member, JointId joint) {
    for (std::size_t i = 1; i < path.size(); ++i) {
        const bool along = (path[i - 1] == member.a && path[i] == member.b) ||
                           (path[i - 1] == member.b && path[i] == member.a);
        if (along) {
            path.insert(std::next(path.begin(), static_cast<std::ptrdiff_t>(i)), joint);
            ++i;
        }
    }
}

template <class Change>
void forEachPath(Truss& truss, const Change& change) {
    for (Load& load : truss.loads) {
        if (auto* chord = std::get_if<ChordLoad>(&load.what)) {
            change(chord->chord);
        }
    }
    for (MovingLoad& moving : truss.moving) {
        change(moving.path);
    }
}

void renameIn(std::vector<JointId>& path, JointId gone, JointId into) {
    std::replace(path.begin(), path.end(), gone, into);
    path.erase(std::unique(path.begin(), path.end()), path.end());
}

bool sameSupport(const Support& one, const Support& other) {
    return one.joint == other.joint && one.kind == other.kind && one.reaction == other.reaction;
}

// Keeps the first of each group of equals.
template <class List, class Same>
void dropRepeated(List& list, const Same& same) {
    List kept;
    for (auto& item : list) {
        const bool repeated = std::any_of(kept.begin(), kept.end(),
                                          [&](const auto& other) { return same(other, item); });
        if (!repeated) {
            kept.push_back(std::move(item));
        }
    }
    list = std::move(kept);
}

// Drops members of zero length, or between joints that are already connected.
void dropUselessMembers(Truss& truss) {
    std::erase_if(truss.members, [](const Member& member) { return member.a == member.b; });
    dropRepeated(truss.members, [](const Member& one, const Member& other) {
        return (one.a == other.a && one.b == other.b) || (one.a == other.b && one.b == other.a);
    });
}

// A load on the member goes to the half that it is on, or to the joint.
void moveLoadsToHalves(Truss& truss, const Member& member, JointId joint) {
    for (Load& load : truss.loads) {
        auto* force = std::get_if<MemberForce>(&load.what);
        const bool isHere = force && ((force->from == member.a && force->to == member.b) ||
                                      (force->from == member.b && force->to == member.a));
        if (!isHere) {
            continue;
        }
        const double half = length(truss.joints[joint.at()].at - truss.joints[force->from.at()].at);
        if (force->at < half) {
            force->to = joint;
        } else if (force->at > half) {
            force->from = joint;
            force->at -= half;
        } else {
            load.what = JointForce{joint, force->fx, force->fy};
        }
    }
}

Vec2 turned(const Placement& placement, Vec2 way) {
    return way.x * placement.xAxis + way.y * placement.yAxis;
}

std::vector<JointId> jointsOf(const Truss& truss, const Things& things) {
    std::vector<JointId> joints = things.joints;
    for (const MemberId member : things.members) {
        joints.push_back(truss.members[member.at()].a);
        joints.push_back(truss.members[member.at()].b);
    }
    std::sort(joints.begin(), joints.end());
    joints.erase(std::unique(joints.begin(), joints.end()), joints.end());
    return joints;
}

// The copy of each joint; none for joints that are not copied.
std::vector<JointId> copyJoints(Truss& truss, const std::vector<JointId>& joints,
                                const Placement& placement) {
    std::vector<JointId> copies(truss.joints.size());
    for (const JointId joint : joints) {
        const Vec2 at = turned(placement, truss.joints[joint.at()].at) + placement.shift;
        const JointId there = jointAt(truss, at);
        copies[joint.at()] = there.valid() ? there : addJoint(truss, at);
    }
    return copies;
}

void copyMember(Truss& truss, MemberId original, const std::vector<JointId>& copies) {
    Member member = truss.members[original.at()];
    member.a = copies[member.a.at()];
    member.b = copies[member.b.at()];
    if (member.a != member.b && !findMember(truss, member.a, member.b).valid()) {
        truss.members.push_back(std::move(member));
    }
}

void copyLoad(Truss& truss, LoadId original, const std::vector<JointId>& copies,
              const Placement& placement) {
    Load load = truss.loads[original.at()];
    const std::vector<JointId> joints = jointsOf(load);
    const auto isCopied = [&](JointId joint) { return copies[joint.at()].valid(); };
    if (joints.empty() || !std::all_of(joints.begin(), joints.end(), isCopied)) {
        return;
    }
    if (const std::optional<Vec2> force = forceOf(load)) {
        const Vec2 way = turned(placement, *force);
        load.what = JointForce{copies[joints[0].at()], way.x, way.y};
    } else if (auto* between = std::get_if<MemberForce>(&load.what)) {
        const Vec2 way = turned(placement, {between->fx, between->fy});
        *between = {copies[joints[0].at()], copies[joints[1].at()], between->at, way.x, way.y};
    } else if (auto* chord = std::get_if<ChordLoad>(&load.what)) {
        for (JointId& joint : chord->chord) {
            joint = copies[joint.at()];
        }
        chord->perLength *= turned(placement, {0, 1}).y;
    }
    truss.loads.push_back(std::move(load));
}

} // namespace

JointId jointAt(const Truss& truss, Vec2 at) {
    const Extent box = extent(truss);
    const double near = kSameSpot * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        if (length(truss.joints[i].at - at) <= near) {
            return JointId{static_cast<int>(i)};
        }
    }
    return {};
}

JointId addJoint(Truss& truss, Vec2 at) {
    truss.joints.push_back({nextLabel(truss), at, {}});
    return JointId{static_cast<int>(truss.joints.size()) - 1};
}

void splitMember(Truss& truss, MemberId split, JointId joint) {
    Member& first = truss.members[split.at()];
    moveLoadsToHalves(truss, first, joint);
    forEachPath(truss, [&](std::vector<JointId>& path) { runThrough(path, first, joint); });
    Member second = first;
    first.b = joint;
    second.a = joint;
    second.misfit = 0; // the whole misfit is in the first half
    second.unknown.clear();
    truss.members.push_back(std::move(second));
    dropUselessMembers(truss);
}

void mergeJoints(Truss& truss, JointId gone, JointId into) {
    for (Member& member : truss.members) {
        member.a = member.a == gone ? into : member.a;
        member.b = member.b == gone ? into : member.b;
    }
    dropUselessMembers(truss);
    for (Support& support : truss.supports) {
        support.joint = support.joint == gone ? into : support.joint;
    }
    dropRepeated(truss.supports, sameSupport);
    for (Load& load : truss.loads) {
        eachJoint(load, [&](JointId& joint) { joint = joint == gone ? into : joint; });
    }
    dropLoadsOffMembers(truss);
    forEachPath(truss, [&](std::vector<JointId>& path) { renameIn(path, gone, into); });
    if (std::optional<std::vector<JointId>>& held = truss.checks.held) {
        renameIn(*held, gone, into);
        dropRepeated(*held, [](JointId one, JointId other) { return one == other; });
    }
    Things things;
    things.joints = {gone};
    removeThings(truss, things);
}

void copyThings(Truss& truss, const CopyThings& edit) {
    const std::vector<JointId> joints = jointsOf(truss, edit.things);
    for (const Placement& placement : edit.placements) {
        const std::vector<JointId> copies = copyJoints(truss, joints, placement);
        for (const MemberId member : edit.things.members) {
            copyMember(truss, member, copies);
        }
        for (const LoadId load : edit.things.loads) {
            copyLoad(truss, load, copies, placement);
        }
    }
}

} // namespace gusset
