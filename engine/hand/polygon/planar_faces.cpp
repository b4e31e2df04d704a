#include "hand/polygon/planar_faces.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

Vec2 at(const Truss& truss, JointId joint) { return truss.joints[joint.at()].at; }

// The signed distance of a point from the line from a to b, positive on the left.
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
    // An end of one lies on the other, or both are collinear and overlap.
    return (std::fabs(sc) <= small && between(a, b, c, small)) ||
           (std::fabs(sd) <= small && between(a, b, d, small)) ||
           (std::fabs(sa) <= small && between(c, d, a, small)) ||
           (std::fabs(sb) <= small && between(c, d, b, small));
}

struct MemberBox {
    Vec2 low;
    Vec2 high;
    MemberId member;
};

// Slightly larger than the members.
std::vector<MemberBox> memberBoxes(const Truss& truss, double larger) {
    std::vector<MemberBox> boxes;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Vec2 a = at(truss, truss.members[i].a);
        const Vec2 b = at(truss, truss.members[i].b);
        boxes.push_back({{std::min(a.x, b.x) - larger, std::min(a.y, b.y) - larger},
                         {std::max(a.x, b.x) + larger, std::max(a.y, b.y) + larger},
                         {static_cast<int>(i)}});
    }
    return boxes;
}

// Compares by half-planes, so that no angle needs to be computed: anticlockwise from +x.
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

// At a joint, the walk that keeps its space on the left continues along the half-edge that is next
// clockwise from the one back.
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

// A sweep from left to right over the bounding boxes of the members: only members whose boxes touch
// are compared (M. I. Shamos, D. Hoey, Geometric intersection problems, 17th Symp. Foundations of
// Computer Science, 1976), which is n² at worst.
std::optional<std::pair<MemberId, MemberId>> crossingMembers(const Truss& truss) {
    const Extent box = extent(truss);
    const double small = kSameSpot * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    std::vector<MemberBox> boxes = memberBoxes(truss, 2 * small);
    std::sort(boxes.begin(), boxes.end(),
              [](const MemberBox& a, const MemberBox& b) { return a.low.x < b.low.x; });
    std::optional<std::pair<MemberId, MemberId>> first;
    std::vector<const MemberBox*> open;
    for (const MemberBox& one : boxes) {
        std::erase_if(open, [&](const MemberBox* it) { return it->high.x < one.low.x; });
        for (const MemberBox* other : open) {
            const std::pair<MemberId, MemberId> pair = std::minmax(one.member, other->member);
            const bool touch = one.low.y <= other->high.y && other->low.y <= one.high.y;
            if (touch && (!first || pair < *first) &&
                membersCross(truss, truss.members[pair.first.at()], truss.members[pair.second.at()],
                             small)) {
                first = pair;
            }
        }
        open.push_back(&one);
    }
    return first;
}

std::optional<JointId> looseJoint(const Truss& truss) {
    std::vector<std::vector<JointId>> joined(truss.joints.size());
    for (const Member& member : truss.members) {
        joined[member.a.at()].push_back(member.b);
        joined[member.b.at()].push_back(member.a);
    }
    std::vector<bool> reached(truss.joints.size());
    std::vector<JointId> open;
    if (!reached.empty()) {
        reached[0] = true;
        open.push_back({0});
    }
    while (!open.empty()) {
        const JointId joint = open.back();
        open.pop_back();
        for (const JointId next : joined[joint.at()]) {
            if (!reached[next.at()]) {
                reached[next.at()] = true;
                open.push_back(next);
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
