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

} // namespace

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
