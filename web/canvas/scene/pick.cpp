#include "canvas/scene/pick.hpp"

#include "canvas/scene/symbols.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

// However small the drawing, a joint is hit within this many px.
constexpr double kSureOfJoint = 4;

struct Near {
    Hit thing;
    double distance = 0; // CSS px
};

void keepNearer(Near& best, ThingId thing, double distance) {
    if (!best.thing || distance < best.distance) {
        best = {thing, distance};
    }
}

Hit within(const Near& near, double slack) { return near.distance <= slack ? near.thing : Hit{}; }

Near nearestJoint(const Truss& truss, const Camera& camera, Vec2 pixel) {
    Near best;
    for (int i = 0; i < static_cast<int>(truss.joints.size()); ++i) {
        const JointId joint{i};
        keepNearer(best, joint, length(toPixel(camera, truss.joints[joint.at()].at) - pixel));
    }
    return best;
}

Near nearestMember(const Truss& truss, const Camera& camera, Vec2 pixel) {
    Near best;
    for (int i = 0; i < static_cast<int>(truss.members.size()); ++i) {
        const Member& member = truss.members[MemberId{i}.at()];
        const Vec2 a = toPixel(camera, truss.joints[member.a.at()].at);
        const Vec2 b = toPixel(camera, truss.joints[member.b.at()].at);
        keepNearer(best, MemberId{i}, distanceToSegment(pixel, a, b));
    }
    return best;
}

Near nearestSymbol(const Truss& truss, const Camera& camera, Vec2 pixel) {
    const Symbols symbols = layOutSymbols(truss, camera);
    Near best;
    for (const LoadSymbol& load : symbols.loads) {
        keepNearer(best, load.load, distanceToSegment(pixel, load.arrow.tail, load.arrow.head));
    }
    for (const ChordSymbol& chord : symbols.chords) {
        for (const Arrow& edge : chord.edges) {
            keepNearer(best, chord.load, distanceToSegment(pixel, edge.tail, edge.head));
        }
    }
    for (const SupportSymbol& support : symbols.supports) {
        const Vec2 ground = support.joint + kSupportDepth * support.down;
        keepNearer(best, support.support,
                   distanceToSegment(pixel, support.joint + kJointRadius * support.down, ground));
    }
    return best;
}

// Where members are short, the joints leave their middle thirds free to be touched.
double jointSlack(const Truss& truss, const Camera& camera, const Hit& member, double slack) {
    if (!member) {
        return slack;
    }
    const Vec2 along = memberVector(truss, hitOf<MemberId>(member));
    const double third = camera.scale * length(along) / 3;
    return std::clamp(third, std::min(kSureOfJoint, slack), slack);
}

} // namespace

double shareAlong(Vec2 point, Vec2 a, Vec2 b) {
    const Vec2 along = b - a;
    const double square = dot(along, along);
    return square > 0 ? std::clamp(dot(point - a, along) / square, 0.0, 1.0) : 0;
}

double distanceToSegment(Vec2 point, Vec2 a, Vec2 b) {
    return length(point - a - shareAlong(point, a, b) * (b - a));
}

Hit pickIn(const Truss& truss, const Camera& camera, Vec2 pixel, double slack) {
    const Hit member = within(nearestMember(truss, camera, pixel), slack);
    const Hit joint =
        within(nearestJoint(truss, camera, pixel), jointSlack(truss, camera, member, slack));
    if (joint) {
        return joint;
    }
    const Hit symbol = within(nearestSymbol(truss, camera, pixel), slack);
    return symbol ? symbol : member;
}

Hit pick(const AppState& state, Vec2 pixel, double slack) {
    return pickIn(state.truss, state.view.camera, pixel, slack);
}

Things thingsWhere(const AppState& state, const std::function<bool(Vec2 pixel)>& holds) {
    const Truss& truss = state.truss;
    std::vector<bool> inside(truss.joints.size());
    Things things;
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        inside[i] = holds(toPixel(state.view.camera, truss.joints[i].at));
        if (inside[i]) {
            things.joints.push_back(JointId{static_cast<int>(i)});
        }
    }
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        if (inside[truss.members[i].a.at()] && inside[truss.members[i].b.at()]) {
            things.members.push_back(MemberId{static_cast<int>(i)});
        }
    }
    return things;
}

Things thingsInBox(const AppState& state, Vec2 corner, Vec2 opposite) {
    return thingsWhere(state, [&](Vec2 at) {
        return std::min(corner.x, opposite.x) <= at.x && at.x <= std::max(corner.x, opposite.x) &&
               std::min(corner.y, opposite.y) <= at.y && at.y <= std::max(corner.y, opposite.y);
    });
}

Things membersAcross(const AppState& state, Vec2 from, Vec2 to) {
    // Twice the signed area of the triangle: which side of a line a point lies on.
    const auto side = [](Vec2 a, Vec2 b, Vec2 point) {
        return (b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x);
    };
    const Truss& truss = state.truss;
    Things things;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Vec2 a = toPixel(state.view.camera, truss.joints[truss.members[i].a.at()].at);
        const Vec2 b = toPixel(state.view.camera, truss.joints[truss.members[i].b.at()].at);
        if (side(from, to, a) * side(from, to, b) < 0 && side(a, b, from) * side(a, b, to) < 0) {
            things.members.push_back(MemberId{static_cast<int>(i)});
        }
    }
    return things;
}

} // namespace gusset
