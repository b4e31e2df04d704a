#include "hand/force_polygon.hpp"

#include "core/tolerance.hpp"
#include "hand/planar_faces.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace gusset {
namespace {

struct OutsideForce {
    JointId joint;
    bool reaction = false;
    Vec2 force;
};

struct Known {
    std::vector<double> members; // force units, tension positive
    std::vector<OutsideForce> outside;
};

bool counts(Vec2 force, double scale) {
    return std::fabs(force.x) > kZeroForce * scale || std::fabs(force.y) > kZeroForce * scale;
}

// Loads and reactions, joint by joint, and the members' forces, as a complete working ends with
// them.
Known knownForces(const Truss& truss, const Working& working) {
    Known known;
    std::vector<Vec2> reactions(truss.joints.size());
    double scale = 0;
    for (const Found& found : working.steps.back().found) {
        scale = std::max(scale, std::fabs(found.value));
        if (found.symbol.kind == SymbolKind::Reaction) {
            const Restraint& restraint =
                working.structure.restraints[static_cast<std::size_t>(found.symbol.restraint)];
            Vec2& sum = reactions[restraint.joint.at()];
            sum = sum + found.value * restraint.along;
        } else {
            known.members.push_back(found.value);
        }
    }
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        if (counts(working.loads[i], scale)) {
            known.outside.push_back({joint, false, working.loads[i]});
        }
        if (counts(reactions[i], scale)) {
            known.outside.push_back({joint, true, reactions[i]});
        }
    }
    return known;
}

// The corners of the outer space, clockwise around the truss: by the half-edge that leaves each.
std::vector<int> outerWalk(const Truss& truss, const PlanarFaces& faces) {
    std::size_t start = 0;
    bool found = false;
    for (std::size_t i = 0; i < faces.edges.size(); ++i) {
        if (faces.edges[i].face != faces.outer) {
            continue;
        }
        const Vec2 at = truss.joints[faces.edges[i].from.at()].at;
        const Vec2 best = truss.joints[faces.edges[start].from.at()].at;
        if (!found || at.x < best.x || (at.x == best.x && at.y < best.y)) {
            start = i;
            found = true;
        }
    }
    std::vector<int> walk;
    std::size_t i = start;
    do {
        walk.push_back(static_cast<int>(i));
        i = static_cast<std::size_t>(faces.edges[i].next);
    } while (i != start);
    return walk;
}

std::string letterOf(std::size_t index) {
    std::string name(1, static_cast<char>('A' + index % 26));
    return index < 26 ? name : name + std::to_string(index / 26);
}

Vec2 middleOf(const Truss& truss, const HalfEdge& edge) {
    return 0.5 * (truss.joints[edge.from.at()].at + truss.joints[edge.to.at()].at);
}

struct Drawing {
    const Truss& truss;
    PlanarFaces faces;
    std::vector<int> spaceOfEdge; // of each half-edge the space on its left
    std::vector<bool> placed;     // of each space: its point is known
    ForcePolygon polygon{};
};

int addSpace(Drawing& drawing, std::string name, bool outside) {
    drawing.polygon.spaces.push_back({std::move(name), outside, {}, {}});
    drawing.placed.push_back(outside);
    return static_cast<int>(drawing.polygon.spaces.size()) - 1;
}

// Names the outside and sets its points: each load and reaction leads from one space to the next.
void drawOutside(Drawing& drawing, std::vector<OutsideForce> outside) {
    const std::vector<int> walk = outerWalk(drawing.truss, drawing.faces);
    int space = addSpace(drawing, letterOf(0), true);
    const std::size_t total = outside.size();
    for (const int index : walk) {
        const JointId corner = drawing.faces.edges[static_cast<std::size_t>(index)].from;
        for (auto it = outside.begin(); it != outside.end();) {
            if (it->joint != corner) {
                ++it;
                continue;
            }
            const bool last = drawing.polygon.lines.size() + 1 == total;
            const Vec2 end =
                drawing.polygon.spaces[static_cast<std::size_t>(space)].point + it->force;
            const int next =
                last ? 0 : addSpace(drawing, letterOf(drawing.polygon.spaces.size()), true);
            if (!last) {
                drawing.polygon.spaces.back().point = end;
            }
            drawing.polygon.lines.push_back(
                {{}, corner, it->reaction, space, next, length(it->force)});
            space = next;
            it = outside.erase(it);
        }
        drawing.spaceOfEdge[static_cast<std::size_t>(index)] = space;
    }
}

// A load at a joint that is not on the outer walk.
std::optional<JointId> insideForce(const Drawing& drawing,
                                   const std::vector<OutsideForce>& forces) {
    for (const OutsideForce& force : forces) {
        const bool onEdge = std::any_of(
            drawing.faces.edges.begin(), drawing.faces.edges.end(), [&](const HalfEdge& edge) {
                return edge.face == drawing.faces.outer && edge.from == force.joint;
            });
        if (!onEdge) {
            return force.joint;
        }
    }
    return std::nullopt;
}

// Spaces between members, named when they are reached.
void nameInside(Drawing& drawing) {
    std::vector<int> spaceOfFace(static_cast<std::size_t>(drawing.faces.count), -1);
    int number = 0;
    for (std::size_t i = 0; i < drawing.faces.edges.size(); ++i) {
        const int face = drawing.faces.edges[i].face;
        if (face == drawing.faces.outer) {
            continue;
        }
        int& space = spaceOfFace[static_cast<std::size_t>(face)];
        if (space < 0) {
            space = addSpace(drawing, std::to_string(++number), false);
        }
        drawing.spaceOfEdge[i] = space;
    }
}

// Draws a member between its two spaces; the point of the second becomes known if it was not.
void drawMember(Drawing& drawing, std::size_t edge, double force) {
    const HalfEdge& along = drawing.faces.edges[edge];
    const int left = drawing.spaceOfEdge[edge];
    const int right = drawing.spaceOfEdge[edge ^ 1u];
    const Vec2 run =
        drawing.truss.joints[along.to.at()].at - drawing.truss.joints[along.from.at()].at;
    const auto r = static_cast<std::size_t>(right);
    if (!drawing.placed[r]) {
        drawing.polygon.spaces[r].point =
            drawing.polygon.spaces[static_cast<std::size_t>(left)].point +
            (force / length(run)) * run;
        drawing.placed[r] = true;
    }
    drawing.polygon.lines.push_back({along.member, {}, false, left, right, force});
}

// How many members of a space that is not placed lead to spaces that are: two fix it on paper.
int fixedBy(const Drawing& drawing, int space) {
    int count = 0;
    for (std::size_t i = 0; i < drawing.faces.edges.size(); ++i) {
        const int across = drawing.spaceOfEdge[i ^ 1u];
        count += drawing.spaceOfEdge[i] == space && across != space &&
                         drawing.placed[static_cast<std::size_t>(across)]
                     ? 1
                     : 0;
    }
    return count;
}

std::optional<int> nextSpace(const Drawing& drawing) {
    std::optional<int> best;
    int most = 0;
    for (std::size_t i = 0; i < drawing.placed.size(); ++i) {
        const int space = static_cast<int>(i);
        const int fixed = drawing.placed[i] ? 0 : fixedBy(drawing, space);
        if (fixed > most) {
            most = fixed;
            best = space;
        }
    }
    return best;
}

// Every member between spaces that are placed, then the next space, until all are drawn.
void drawMembers(Drawing& drawing, const std::vector<double>& forces) {
    std::vector<bool> drawn(forces.size());
    const auto drawBetweenPlaced = [&] {
        for (std::size_t m = 0; m < forces.size(); ++m) {
            const auto left = static_cast<std::size_t>(drawing.spaceOfEdge[2 * m]);
            const auto right = static_cast<std::size_t>(drawing.spaceOfEdge[2 * m + 1]);
            if (!drawn[m] && drawing.placed[left] && drawing.placed[right]) {
                drawMember(drawing, 2 * m, forces[m]);
                drawn[m] = true;
            }
        }
    };
    drawBetweenPlaced();
    for (auto space = nextSpace(drawing); space; space = nextSpace(drawing)) {
        for (std::size_t e = 0; e < drawing.faces.edges.size(); ++e) {
            const auto left = static_cast<std::size_t>(drawing.spaceOfEdge[e]);
            if (drawing.spaceOfEdge[e ^ 1u] == *space && drawing.placed[left] && !drawn[e / 2]) {
                drawMember(drawing, e, forces[e / 2]);
                drawn[e / 2] = true;
            }
        }
        drawBetweenPlaced();
    }
}

// A name stands in the middle of its members; outside, a little away from the truss.
void seatNames(Drawing& drawing) {
    const Extent box = extent(drawing.truss);
    const double away = 0.08 * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    std::vector<int> count(drawing.polygon.spaces.size());
    for (std::size_t i = 0; i < drawing.faces.edges.size(); ++i) {
        const HalfEdge& edge = drawing.faces.edges[i];
        const auto space = static_cast<std::size_t>(drawing.spaceOfEdge[i]);
        const Vec2 run =
            drawing.truss.joints[edge.to.at()].at - drawing.truss.joints[edge.from.at()].at;
        const Vec2 left = (away / length(run)) * Vec2{-run.y, run.x};
        const bool outside = drawing.polygon.spaces[space].outside;
        Vec2& seat = drawing.polygon.spaces[space].seat;
        seat = seat + middleOf(drawing.truss, edge) + (outside ? left : Vec2{});
        ++count[space];
    }
    for (std::size_t i = 0; i < count.size(); ++i) {
        Vec2& seat = drawing.polygon.spaces[i].seat;
        seat = count[i] > 0 ? (1.0 / count[i]) * seat : box.low - Vec2{away, away};
    }
}

ForcePolygon refused(PolygonRefusal refusal, std::vector<MemberId> members, JointId joint) {
    ForcePolygon polygon;
    polygon.refusal = refusal;
    polygon.members = std::move(members);
    polygon.joint = joint;
    return polygon;
}

} // namespace

ForcePolygon forcePolygon(const Truss& truss, const LoadChoice& choice, const Solution& solution) {
    if (truss.members.empty()) {
        return refused(PolygonRefusal::NoMember, {}, {});
    }
    const Working working = workOut(truss, choice, solution);
    if (!working.complete) {
        return refused(PolygonRefusal::NoWorking, {}, {});
    }
    if (const auto loose = looseJoint(truss)) {
        return refused(PolygonRefusal::NotConnected, {}, *loose);
    }
    if (const auto crossing = crossingMembers(truss)) {
        return refused(PolygonRefusal::CrossingMembers, {crossing->first, crossing->second}, {});
    }
    Drawing drawing{truss, planarFaces(truss), {}, {}};
    drawing.spaceOfEdge.assign(drawing.faces.edges.size(), -1);
    const Known known = knownForces(truss, working);
    if (const auto inside = insideForce(drawing, known.outside)) {
        return refused(PolygonRefusal::ForceInside, {}, *inside);
    }
    drawOutside(drawing, known.outside);
    nameInside(drawing);
    drawMembers(drawing, known.members);
    seatNames(drawing);
    return drawing.polygon;
}

} // namespace gusset
