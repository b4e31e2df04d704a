#include "app/state/thing.hpp"

#include <algorithm>

namespace gusset {
namespace {

// Those of one kind, in a truss or among things.
template <class All>
auto& ofKind(All& all, JointId) {
    return all.joints;
}
template <class All>
auto& ofKind(All& all, MemberId) {
    return all.members;
}
template <class All>
auto& ofKind(All& all, SupportId) {
    return all.supports;
}
template <class All>
auto& ofKind(All& all, LoadId) {
    return all.loads;
}

Vec2 between(const Truss& truss, JointId a, JointId b) {
    return 0.5 * (truss.joints[a.at()].at + truss.joints[b.at()].at);
}

struct MiddleOf {
    const Truss& truss;
    Vec2 operator()(JointId joint) const { return truss.joints[joint.at()].at; }
    Vec2 operator()(MemberId member) const {
        const Member& it = truss.members[member.at()];
        return between(truss, it.a, it.b);
    }
    Vec2 operator()(SupportId support) const {
        return truss.joints[truss.supports[support.at()].joint.at()].at;
    }
    Vec2 operator()(LoadId load) const {
        const Load& it = truss.loads[load.at()];
        if (const auto* chord = std::get_if<ChordLoad>(&it.what)) {
            return between(truss, chord->chord.front(), chord->chord.back());
        }
        if (const auto* onMember = std::get_if<MemberForce>(&it.what)) {
            return between(truss, onMember->from, onMember->to);
        }
        const JointId joint = jointOf(it);
        return truss.joints.empty() ? Vec2{} : truss.joints[joint.valid() ? joint.at() : 0].at;
    }
};

} // namespace

Vec2 middleOf(const Truss& truss, const ThingId& thing) {
    return std::visit(MiddleOf{truss}, thing);
}

int rowOf(const ThingId& thing) {
    return std::visit([](auto id) { return id.index; }, thing);
}

bool isThere(const Truss& truss, const ThingId& thing) {
    return std::visit([&](auto id) { return id.valid() && id.at() < ofKind(truss, id).size(); },
                      thing);
}

Things thingsOf(const Hit& hit) {
    Things things;
    if (hit) {
        std::visit([&](auto id) { ofKind(things, id).push_back(id); }, *hit);
    }
    return things;
}

std::size_t countOf(const Things& things) {
    return things.joints.size() + things.members.size() + things.supports.size() +
           things.loads.size();
}

bool holds(const Things& things, const ThingId& thing) {
    return std::visit(
        [&](auto id) {
            const auto& ids = ofKind(things, id);
            return std::find(ids.begin(), ids.end(), id) != ids.end();
        },
        thing);
}

Hit onlyOne(const Things& things) {
    if (countOf(things) != 1) {
        return std::nullopt;
    }
    return !things.joints.empty()     ? Hit(things.joints.front())
           : !things.members.empty()  ? Hit(things.members.front())
           : !things.supports.empty() ? Hit(things.supports.front())
                                      : Hit(things.loads.front());
}

} // namespace gusset
