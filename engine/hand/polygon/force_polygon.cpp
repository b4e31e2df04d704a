#include "hand/polygon/force_polygon.hpp"

#include "core/tolerance.hpp"
#include "hand/polygon/polygon_drawing.hpp"
#include "hand/polygon/space_names.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
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
std::vector<std::size_t> outerWalk(const Truss& truss, const PlanarFaces& faces) {
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
    std::vector<std::size_t> walk;
    std::size_t i = start;
    do {
        walk.push_back(i);
        i = static_cast<std::size_t>(faces.edges[i].next);
    } while (i != start);
    return walk;
}

int addSpace(PolygonInHand& drawing, std::string name, bool outside) {
    drawing.polygon.spaces.push_back({std::move(name), outside, {}, {}, {}});
    drawing.placed.push_back(outside);
    return static_cast<int>(drawing.polygon.spaces.size()) - 1;
}

// The side of a joint on which a force is drawn: where there is more room beside the members.
Vec2 sideOf(const PolygonInHand& drawing, const OutsideForce& force) {
    const Vec2 along = (1 / length(force.force)) * force.force;
    double before = -2;
    double behind = -2;
    for (std::size_t e = 0; e < drawing.faces.edges.size(); ++e) {
        if (drawing.faces.edges[e].from == force.joint) {
            const double share = dot(drawing.runOf(e), along) / length(drawing.runOf(e));
            before = std::max(before, share);
            behind = std::max(behind, -share);
        }
    }
    return before + kHair < behind ? along : -along;
}

// The turn from one direction to another, clockwise, from 0 to 2π.
double clockwiseTurn(Vec2 from, Vec2 to) {
    constexpr double kFull = 2 * 3.14159265358979323846;
    const double turn = std::atan2(from.y, from.x) - std::atan2(to.y, to.x);
    return turn < 0 ? turn + kFull : turn;
}

// Puts the forces of one joint, a load and a reaction at most, in their order clockwise from the
// half-edge by which the walk arrives. Two that would be drawn on the same side are drawn on
// opposite ones, the reaction first.
void sortRound(const PolygonInHand& drawing, std::size_t arriving,
               std::vector<const OutsideForce*>& forces) {
    if (forces.size() < 2) {
        return;
    }
    const OutsideForce* load = forces[0]->reaction ? forces[1] : forces[0];
    const OutsideForce* reaction = forces[0]->reaction ? forces[0] : forces[1];
    const Vec2 held = sideOf(drawing, *reaction);
    Vec2 loaded = sideOf(drawing, *load);
    if (dot(held, loaded) > 1 - kParallel) {
        loaded = -loaded;
    }
    const Vec2 back = -drawing.runOf(arriving);
    forces = {load, reaction};
    if (clockwiseTurn(back, held) < clockwiseTurn(back, loaded)) {
        std::swap(forces[0], forces[1]);
    }
}

// Names the outer spaces and sets their points: each load and reaction leads from one space to the
// next.
void drawOutside(PolygonInHand& drawing, const std::vector<OutsideForce>& outside,
                 SpaceNames& names) {
    std::vector<std::vector<const OutsideForce*>> forcesAt(drawing.truss.joints.size());
    for (const OutsideForce& force : outside) {
        forcesAt[force.joint.at()].push_back(&force);
    }
    int space = addSpace(drawing, names.nextOutside(), true);
    std::size_t arriving = drawing.round.back();
    for (const std::size_t index : drawing.round) {
        const JointId corner = drawing.faces.edges[index].from;
        std::vector<const OutsideForce*>& forces = forcesAt[corner.at()];
        sortRound(drawing, arriving, forces);
        arriving = index;
        // At the first corner of a joint.
        for (const OutsideForce* force : std::exchange(forces, {})) {
            const bool last = drawing.polygon.lines.size() + 1 == outside.size();
            const Vec2 end =
                drawing.polygon.spaces[static_cast<std::size_t>(space)].point + force->force;
            const int next = last ? 0 : addSpace(drawing, names.nextOutside(), true);
            if (!last) {
                drawing.polygon.spaces.back().point = end;
            }
            drawing.polygon.lines.push_back(
                {{}, corner, force->reaction, space, next, length(force->force)});
            space = next;
        }
        drawing.spaceOfEdge[index] = space;
    }
    if (!drawing.polygon.lines.empty()) {
        drawing.polygon.steps.push_back({PolygonMove::Outside, 0, drawing.polygon.lines.size()});
    }
}

// A load at a joint that is not on the outer walk.
std::optional<JointId> insideForce(const PolygonInHand& drawing,
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
void nameInside(PolygonInHand& drawing, SpaceNames& names) {
    std::vector<int> spaceOfFace(static_cast<std::size_t>(drawing.faces.count), -1);
    for (std::size_t i = 0; i < drawing.faces.edges.size(); ++i) {
        const int face = drawing.faces.edges[i].face;
        if (face == drawing.faces.outer) {
            continue;
        }
        int& space = spaceOfFace[static_cast<std::size_t>(face)];
        if (space < 0) {
            space = addSpace(drawing, names.nextInside(), false);
        }
        drawing.spaceOfEdge[i] = space;
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
    PolygonInHand drawing{truss, planarFaces(truss), {}, {}};
    drawing.round = outerWalk(truss, drawing.faces);
    drawing.spaceOfEdge.assign(drawing.faces.edges.size(), -1);
    const Known known = knownForces(truss, working);
    if (const auto inside = insideForce(drawing, known.outside)) {
        return refused(PolygonRefusal::ForceInside, {}, *inside);
    }
    SpaceNames names(truss);
    drawing.polygon.insideByNumber = names.insideByNumber();
    drawOutside(drawing, known.outside, names);
    nameInside(drawing, names);
    drawMembers(drawing, known.members);
    seatNames(drawing);
    return drawing.polygon;
}

} // namespace gusset
