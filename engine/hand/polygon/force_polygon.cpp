#include "hand/polygon/force_polygon.hpp"

#include "core/tolerance.hpp"
#include "hand/polygon/planar_faces.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <queue>
#include <utility>

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

// Loads and reactions, joint by joint, and the members' forces at the end of a complete working.
Known knownForces(const Truss& truss, const Working& working) {
    Known known;
    std::vector<Vec2> reactions(truss.joints.size());
    double scale = 0;
    for (const Found& found : working.steps.back().found) {
        scale = std::max(scale, std::fabs(found.value));
        if (found.symbol.kind == SymbolKind::Reaction) {
            const Restraint& restraint = working.structure.restraints[found.symbol.restraint.at()];
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

// The corners of the outer space, clockwise around the truss: the half-edge that leaves each of
// them.
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
    std::vector<int> spaceOfEdge; // for each half-edge, the space on its left
    std::vector<bool> placed;     // for each space: its point is known
    ForcePolygon polygon{};

    [[nodiscard]] std::size_t leftOf(std::size_t edge) const {
        return static_cast<std::size_t>(spaceOfEdge[edge]);
    }
    [[nodiscard]] std::size_t rightOf(std::size_t edge) const { return leftOf(edge ^ 1u); }
};

int addSpace(Drawing& drawing, std::string name, bool outside) {
    drawing.polygon.spaces.push_back({std::move(name), outside, {}, {}});
    drawing.placed.push_back(outside);
    return static_cast<int>(drawing.polygon.spaces.size()) - 1;
}

// Names the outer spaces and sets their points: each load and reaction leads from one space to the
// next.
void drawOutside(Drawing& drawing, const std::vector<OutsideForce>& outside) {
    std::vector<std::vector<const OutsideForce*>> forcesAt(drawing.truss.joints.size());
    for (const OutsideForce& force : outside) {
        forcesAt[force.joint.at()].push_back(&force);
    }
    int space = addSpace(drawing, letterOf(0), true);
    for (const int index : outerWalk(drawing.truss, drawing.faces)) {
        const JointId corner = drawing.faces.edges[static_cast<std::size_t>(index)].from;
        // At the first corner of a joint.
        for (const OutsideForce* force : std::exchange(forcesAt[corner.at()], {})) {
            const bool last = drawing.polygon.lines.size() + 1 == outside.size();
            const Vec2 end =
                drawing.polygon.spaces[static_cast<std::size_t>(space)].point + force->force;
            const int next =
                last ? 0 : addSpace(drawing, letterOf(drawing.polygon.spaces.size()), true);
            if (!last) {
                drawing.polygon.spaces.back().point = end;
            }
            drawing.polygon.lines.push_back(
                {{}, corner, force->reaction, space, next, length(force->force)});
            space = next;
        }
        drawing.spaceOfEdge[static_cast<std::size_t>(index)] = space;
    }
}

// A load at a joint that is not on the outer walk.
std::optional<JointId> insideForce(const Drawing& drawing,
                                   const std::vector<OutsideForce>& forces) {
    std::vector<bool> onEdge(drawing.truss.joints.size());
    for (const HalfEdge& edge : drawing.faces.edges) {
        if (edge.face == drawing.faces.outer) {
            onEdge[edge.from.at()] = true;
        }
    }
    const auto inside = std::find_if(forces.begin(), forces.end(), [&](const OutsideForce& force) {
        return !onEdge[force.joint.at()];
    });
    return inside == forces.end() ? std::nullopt : std::optional(inside->joint);
}

// Spaces between members, named in the order in which they are reached.
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

// Draws a member between its two spaces; this sets the point of the second if it was not known.
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

// Draws members, space by space: next is always the space determined by the most drawn points, and
// of several the one named first. The counts are updated as the drawing grows and kept in a heap
// (J. W. J. Williams, Algorithm 232, Comm. ACM 7 (1964)): n log n in total.
class MemberDrawing {
public:
    MemberDrawing(Drawing& drawing, const std::vector<double>& forces)
        : drawing_(drawing), forces_(forces), drawn_(forces.size()),
          edgesTo_(drawing.placed.size()), fixedBy_(drawing.placed.size()) {
        for (std::size_t e = 0; e < drawing.faces.edges.size(); ++e) {
            edgesTo_[drawing.rightOf(e)].push_back(e);
        }
        for (std::size_t space = 0; space < drawing.placed.size(); ++space) {
            if (drawing.placed[space]) {
                countPlaced(space);
            }
        }
    }

    void drawAll() {
        for (std::size_t member = 0; member < forces_.size(); ++member) {
            drawIfPlaced(member);
        }
        while (!next_.empty()) {
            const Fixed fixed = next_.top();
            next_.pop();
            if (!drawing_.placed[fixed.space] && fixed.count == fixedBy_[fixed.space]) {
                drawSpace(fixed.space);
            }
        }
    }

private:
    struct Fixed {
        int count; // members from the space to placed ones: two determine it on paper
        std::size_t space;
        bool operator<(const Fixed& other) const { // the next one on top
            return count != other.count ? count < other.count : space > other.space;
        }
    };

    void countPlaced(std::size_t space) {
        for (const std::size_t e : edgesTo_[space]) {
            const std::size_t across = drawing_.leftOf(e);
            if (across != space) {
                next_.push({++fixedBy_[across], across});
            }
        }
    }

    void draw(std::size_t edge) {
        drawMember(drawing_, edge, forces_[edge / 2]);
        drawn_[edge / 2] = true;
    }

    void drawIfPlaced(std::size_t member) {
        if (!drawn_[member] && drawing_.placed[drawing_.leftOf(2 * member)] &&
            drawing_.placed[drawing_.rightOf(2 * member)]) {
            draw(2 * member);
        }
    }

    void drawSpace(std::size_t space) {
        for (const std::size_t e : edgesTo_[space]) {
            if (drawing_.placed[drawing_.leftOf(e)] && !drawn_[e / 2]) {
                draw(e);
            }
        }
        for (const std::size_t e : edgesTo_[space]) { // members with this space on both sides
            drawIfPlaced(e / 2);
        }
        countPlaced(space);
    }

    Drawing& drawing_;
    const std::vector<double>& forces_;
    std::vector<bool> drawn_;                       // by member
    std::vector<std::vector<std::size_t>> edgesTo_; // half-edges with the space on their right
    std::vector<int> fixedBy_;                      // by space, for those not placed
    std::priority_queue<Fixed> next_;
};

// A name is placed in the middle of its members; outside, slightly away from the truss.
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
    return forcePolygon(truss, workOut(truss, choice, solution));
}

ForcePolygon forcePolygon(const Truss& truss, const Working& working) {
    if (truss.members.empty()) {
        return refused(PolygonRefusal::NoMember, {}, {});
    }
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
    MemberDrawing(drawing, known.members).drawAll();
    seatNames(drawing);
    return drawing.polygon;
}

} // namespace gusset
