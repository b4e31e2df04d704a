#include "hand/planar_faces.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

Vec2 at(const Truss& truss, JointId joint) { return truss.joints[joint.at()].at; }

// Which side of the line from a to b a point lies on: its distance, positive on the left.
double sideOf(Vec2 a, Vec2 b, Vec2 point) { return cross(b - a, point - a) / length(b - a); }

bool between(Vec2 a, Vec2 b, Vec2 point, double small) {
    const double along = dot(point - a, b - a) / length(b - a);
    return along > small && along < length(b - a) - small;
}

bool membersCross(const Truss& truss, const Member& one, const Member& other, double small) {
    const Vec2 a = at(truss, one.a);
    const Vec2 b = at(truss, one.b);
    const Vec2 c = at(truss, other.a);
    const Vec2 d = at(truss, other.b);
    const double sc = sideOf(a, b, c);
    const double sd = sideOf(a, b, d);
    const double sa = sideOf(c, d, a);
    const double sb = sideOf(c, d, b);
    const auto apart = [&](double p, double q) {
        return (p > small && q < -small) || (p < -small && q > small);
    };
    if (apart(sc, sd) && apart(sa, sb)) {
        return true;
    }
    // An end of one lies on the other, or both lie in one line and overlap.
    return (std::fabs(sc) <= small && between(a, b, c, small)) ||
           (std::fabs(sd) <= small && between(a, b, d, small)) ||
           (std::fabs(sa) <= small && between(c, d, a, small)) ||
           (std::fabs(sb) <= small && between(c, d, b, small));
}

// Turns by half-planes, so that no angle has to be computed: anticlockwise from +x.
bool anticlockwiseBefore(Vec2 a, Vec2 b) {
    const auto lower = [](Vec2 v) { return v.y < 0 || (v.y == 0 && v.x < 0); };
    if (lower(a) != lower(b)) {
        return !lower(a);
    }
    return cross(a, b) > 0;
}

// The half-edges that leave each joint, anticlockwise.
std::vector<std::vector<int>> leavingEdges(const Truss& truss, const PlanarFaces& faces) {
    std::vector<std::vector<int>> leaving(truss.joints.size());
    for (std::size_t i = 0; i < faces.edges.size(); ++i) {
        leaving[faces.edges[i].from.at()].push_back(static_cast<int>(i));
    }
    for (auto& edges : leaving) {
        std::sort(edges.begin(), edges.end(), [&](int one, int other) {
            const auto along = [&](int i) {
                const HalfEdge& edge = faces.edges[static_cast<std::size_t>(i)];
                return at(truss, edge.to) - at(truss, edge.from);
            };
            return anticlockwiseBefore(along(one), along(other));
        });
    }
    return leaving;
}

// Arriving at a joint, the walk that keeps its space on the left goes out by the half-edge that is
// next clockwise from the way back.
void linkEdges(const Truss& truss, PlanarFaces& faces) {
    const auto leaving = leavingEdges(truss, faces);
    for (std::size_t i = 0; i < faces.edges.size(); ++i) {
        const int back = static_cast<int>(i ^ 1u);
        const auto& around = leaving[faces.edges[i].to.at()];
        const auto place = std::find(around.begin(), around.end(), back);
        faces.edges[i].next = place == around.begin() ? around.back() : *(place - 1);
    }
}

double areaAround(const Truss& truss, PlanarFaces& faces, std::size_t start) {
    double twice = 0;
    std::size_t i = start;
    do {
        HalfEdge& edge = faces.edges[i];
        edge.face = faces.count;
        twice += cross(at(truss, edge.from), at(truss, edge.to));
        i = static_cast<std::size_t>(edge.next);
    } while (i != start);
    return twice / 2;
}

} // namespace

std::optional<std::pair<MemberId, MemberId>> crossingMembers(const Truss& truss) {
    const Extent box = extent(truss);
    const double small = kSameSpot * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        for (std::size_t k = i + 1; k < truss.members.size(); ++k) {
            if (membersCross(truss, truss.members[i], truss.members[k], small)) {
                return std::pair{MemberId{static_cast<int>(i)}, MemberId{static_cast<int>(k)}};
            }
        }
    }
    return std::nullopt;
}

std::optional<JointId> looseJoint(const Truss& truss) {
    std::vector<bool> reached(truss.joints.size());
    if (!reached.empty()) {
        reached[0] = true;
    }
    for (bool grown = true; grown;) {
        grown = false;
        for (const Member& member : truss.members) {
            if (reached[member.a.at()] != reached[member.b.at()]) {
                reached[member.a.at()] = reached[member.b.at()] = true;
                grown = true;
            }
        }
    }
    const auto loose = std::find(reached.begin(), reached.end(), false);
    if (loose == reached.end()) {
        return std::nullopt;
    }
    return JointId{static_cast<int>(loose - reached.begin())};
}

PlanarFaces planarFaces(const Truss& truss) {
    PlanarFaces faces;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const MemberId id{static_cast<int>(i)};
        const Member& member = truss.members[i];
        faces.edges.push_back({member.a, member.b, id});
        faces.edges.push_back({member.b, member.a, id});
    }
    linkEdges(truss, faces);
    double least = 0;
    for (std::size_t i = 0; i < faces.edges.size(); ++i) {
        if (faces.edges[i].face < 0) {
            const double area = areaAround(truss, faces, i);
            if (faces.outer < 0 || area < least) { // walked around with its inside on the right
                least = area;
                faces.outer = faces.count;
            }
            ++faces.count;
        }
    }
    return faces;
}

} // namespace gusset
