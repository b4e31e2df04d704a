#include "model/edit/removal.hpp"

#include "model/truss/fields.hpp"

#include <algorithm>

namespace gusset {

namespace {

template <class Tag>
std::vector<bool> marked(const std::vector<Id<Tag>>& ids, std::size_t size) {
    std::vector<bool> marks(size, false);
    for (const Id<Tag> id : ids) {
        if (id.valid() && id.at() < size) {
            marks[id.at()] = true;
        }
    }
    return marks;
}

template <class Thing, class Test>
void eraseAt(std::vector<Thing>& things, const Test& goes) {
    std::size_t kept = 0;
    for (std::size_t i = 0; i < things.size(); ++i) {
        if (!goes(i)) {
            if (kept != i) {
                things[kept] = std::move(things[i]);
            }
            ++kept;
        }
    }
    things.resize(kept);
}

// The new index of each joint, or none.
class Renumbering {
public:
    explicit Renumbering(const std::vector<bool>& goes) {
        int next = 0;
        for (const bool gone : goes) {
            to_.push_back(gone ? JointId{} : JointId{next++});
        }
    }

    [[nodiscard]] bool goes(JointId joint) const { return !to_[joint.at()].valid(); }
    void apply(JointId& joint) const { joint = to_[joint.at()]; }
    void apply(std::vector<JointId>& path) const {
        std::erase_if(path, [&](JointId joint) { return goes(joint); });
        for (JointId& joint : path) {
            apply(joint);
        }
    }

private:
    std::vector<JointId> to_;
};

// Whether the load loses a joint that it needs; if not, its joints are renumbered.
bool losesJoints(Load& load, const Renumbering& joints) {
    if (auto* chord = std::get_if<ChordLoad>(&load.what)) {
        joints.apply(chord->chord);
        return chord->chord.size() < 2;
    }
    bool gone = false;
    eachJoint(load, [&](JointId& joint) {
        gone = gone || joints.goes(joint);
        joints.apply(joint);
    });
    return gone;
}

void removeJoints(Truss& truss, const std::vector<bool>& goes) {
    const Renumbering joints(goes);
    std::erase_if(truss.members,
                  [&](const Member& it) { return joints.goes(it.a) || joints.goes(it.b); });
    for (Member& member : truss.members) {
        joints.apply(member.a);
        joints.apply(member.b);
    }
    std::erase_if(truss.supports, [&](const Support& it) { return joints.goes(it.joint); });
    for (Support& support : truss.supports) {
        joints.apply(support.joint);
    }
    eraseAt(truss.loads, [&](std::size_t i) { return losesJoints(truss.loads[i], joints); });
    eraseAt(truss.moving, [&](std::size_t i) {
        joints.apply(truss.moving[i].path);
        return truss.moving[i].path.size() < 2;
    });
    if (truss.checks.held) {
        joints.apply(*truss.checks.held);
    }
    eraseAt(truss.joints, [&](std::size_t i) { return goes[i]; });
}

} // namespace

void dropLoadsOffMembers(Truss& truss) {
    std::erase_if(truss.loads, [&](const Load& load) {
        const auto* between = std::get_if<MemberForce>(&load.what);
        return between && !findMember(truss, between->from, between->to).valid();
    });
}

void removeThings(Truss& truss, const Things& things) {
    const auto members = marked(things.members, truss.members.size());
    const auto supports = marked(things.supports, truss.supports.size());
    const auto loads = marked(things.loads, truss.loads.size());
    eraseAt(truss.members, [&](std::size_t i) { return members[i]; });
    eraseAt(truss.supports, [&](std::size_t i) { return supports[i]; });
    eraseAt(truss.loads, [&](std::size_t i) { return loads[i]; });
    if (!things.members.empty()) {
        dropLoadsOffMembers(truss);
    }
    if (!things.joints.empty()) {
        removeJoints(truss, marked(things.joints, truss.joints.size()));
    }
}

} // namespace gusset
