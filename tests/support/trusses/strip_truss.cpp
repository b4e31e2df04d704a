#include "support/trusses/strip_truss.hpp"

#include "support/trusses/small_truss.hpp"

#include <cassert>
#include <string>

namespace gusset::support {

namespace {

JointId addJoint(Truss& truss, std::string label, Vec2 at) {
    truss.joints.push_back({std::move(label), at, {}});
    return JointId{static_cast<int>(truss.joints.size()) - 1};
}

void addLoads(Truss& truss, const std::vector<JointId>& bottom) {
    for (std::size_t i = 1; i + 1 < bottom.size(); ++i) {
        Load load;
        load.what = JointForce{bottom[i], 0, -10};
        truss.loads.push_back(load);
    }
}

// Joints of one chord, 3 m apart.
std::vector<JointId> addChord(Truss& truss, const char* prefix, Vec2 start, int count) {
    std::vector<JointId> chord;
    for (int i = 0; i < count; ++i) {
        chord.push_back(addJoint(truss, prefix + std::to_string(i), {start.x + 3.0 * i, start.y}));
    }
    for (int i = 0; i + 1 < count; ++i) {
        member(truss, chord[static_cast<std::size_t>(i)], chord[static_cast<std::size_t>(i) + 1]);
    }
    return chord;
}

} // namespace

Truss stripTruss(Web web, int panels) {
    assert(panels >= 1);
    Truss truss;
    const std::vector<JointId> bottom = addChord(truss, "B", {0, 0}, panels + 1);
    const bool warren = web == Web::Warren;
    const std::vector<JointId> top =
        addChord(truss, "T", {warren ? 1.5 : 0, 3}, warren ? panels : panels + 1);
    for (std::size_t i = 0; i < top.size(); ++i) {
        member(truss, bottom[i], top[i]);
    }
    for (std::size_t i = 0; i + 1 < bottom.size(); ++i) {
        const bool towardsMiddle = 2 * i + 1 < bottom.size();
        if (web != Web::Pratt || towardsMiddle) {
            member(truss, top[i], bottom[i + 1]);
        }
        if (web == Web::Double || (web == Web::Pratt && !towardsMiddle)) {
            member(truss, bottom[i], top[i + 1]);
        }
    }
    pinAndRoller(truss, bottom.front(), bottom.back());
    addLoads(truss, bottom);
    return truss;
}

int panelsFor(Web web, int members) {
    if (web == Web::Pratt) {
        return (members - 1 + 3) / 4;
    }
    if (web == Web::Warren) {
        return (members + 1 + 3) / 4;
    }
    return (members - 1 + 4) / 5;
}

std::vector<JointId> bottomChord(const Truss& truss, int panels) {
    std::vector<JointId> path;
    for (int i = 0; i <= panels; ++i) {
        path.push_back(findJoint(truss, "B" + std::to_string(i)));
    }
    return path;
}

Truss stripWithCart() {
    Truss truss = stripTruss(Web::Pratt, 6);
    MovingLoad cart;
    cart.id = "cart";
    cart.path = bottomChord(truss, 6);
    cart.axles.resize(2);
    cart.axles[0].force = -10;
    cart.axles[1] = {.at = 3, .force = -10, .unknown = {}};
    truss.moving = {cart};
    return truss;
}

} // namespace gusset::support
