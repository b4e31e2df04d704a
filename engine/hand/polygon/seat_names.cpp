#include "hand/polygon/polygon_drawing.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

Vec2 at(const PolygonInHand& drawing, JointId joint) { return drawing.truss.joints[joint.at()].at; }

// Of the area that the half-edges go round; the mean of their middles if they enclose none.
Vec2 centreOf(const PolygonInHand& drawing, const std::vector<std::size_t>& edges) {
    const Vec2 origin = at(drawing, drawing.faces.edges[edges.front()].from);
    double twice = 0;
    Vec2 moment;
    Vec2 mean;
    for (const std::size_t e : edges) {
        const Vec2 a = at(drawing, drawing.faces.edges[e].from) - origin;
        const Vec2 b = at(drawing, drawing.faces.edges[e].to) - origin;
        twice += cross(a, b);
        moment = moment + (cross(a, b) / 3) * (a + b);
        mean = mean + (0.5 / static_cast<double>(edges.size())) * (a + b);
    }
    return origin + (twice > 0 ? (1 / twice) * moment : mean);
}

// Halfway from the middle of a space to each of its corners and sides.
std::vector<Vec2> aroundMiddle(const PolygonInHand& drawing, const std::vector<std::size_t>& edges,
                               Vec2 middle) {
    std::vector<Vec2> seats;
    for (const std::size_t e : edges) {
        const Vec2 a = at(drawing, drawing.faces.edges[e].from);
        const Vec2 b = at(drawing, drawing.faces.edges[e].to);
        seats.push_back(0.5 * (middle + 0.5 * (a + b)));
        seats.push_back(0.5 * (middle + a));
    }
    return seats;
}

Vec2 beside(const PolygonInHand& drawing, std::size_t edge, double along, double away) {
    const Vec2 run = drawing.runOf(edge);
    const double size = length(run);
    return at(drawing, drawing.faces.edges[edge].from) + (along / size) * run +
           (away / size) * Vec2{-run.y, run.x};
}

// Beside the half-edge in the middle of the stretch, measured along it.
Vec2 besideMiddle(const PolygonInHand& drawing, const std::vector<std::size_t>& edges,
                  double away) {
    double half = 0;
    for (const std::size_t e : edges) {
        half += length(drawing.runOf(e)) / 2;
    }
    std::size_t middle = edges.front();
    for (const std::size_t e : edges) {
        middle = e;
        if (half <= length(drawing.runOf(e))) {
            break;
        }
        half -= length(drawing.runOf(e));
    }
    return beside(drawing, middle, half, away);
}

// Away from the members that meet at the joint of the force that leads to this space.
Vec2 besideJoint(const PolygonInHand& drawing, std::size_t space, double away) {
    JointId joint;
    for (const PolygonLine& line : drawing.polygon.lines) {
        if (!line.member.valid() && static_cast<std::size_t>(line.to) == space) {
            joint = line.joint;
        }
    }
    Vec2 inwards;
    for (std::size_t e = 0; e < drawing.faces.edges.size(); ++e) {
        if (drawing.faces.edges[e].from == joint) {
            inwards = inwards + (1 / length(drawing.runOf(e))) * drawing.runOf(e);
        }
    }
    const double size = length(inwards);
    return at(drawing, joint) - (size > 0 ? (away / size) * inwards : Vec2{away, 0});
}

} // namespace

void seatNames(PolygonInHand& drawing) {
    const Extent box = extent(drawing.truss);
    const double away = 0.08 * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    std::vector<std::vector<std::size_t>> edgesOf(drawing.polygon.spaces.size());
    // Beginning where a space begins, so that the one in which the walk began stays in one piece.
    const std::vector<std::size_t>& round = drawing.round;
    const auto first = std::find_if(round.begin(), round.end(), [&](std::size_t e) {
        return drawing.leftOf(e) != drawing.leftOf(round.front());
    });
    const auto begin = static_cast<std::size_t>(first == round.end() ? 0 : first - round.begin());
    for (std::size_t i = 0; i < round.size(); ++i) {
        const std::size_t e = round[(begin + i) % round.size()];
        edgesOf[drawing.leftOf(e)].push_back(e);
    }
    for (std::size_t e = 0; e < drawing.faces.edges.size(); ++e) {
        if (drawing.faces.edges[e].face != drawing.faces.outer) {
            edgesOf[drawing.leftOf(e)].push_back(e);
        }
    }
    for (std::size_t i = 0; i < edgesOf.size(); ++i) {
        PolygonSpace& space = drawing.polygon.spaces[i];
        if (edgesOf[i].empty()) {
            space.seat = besideJoint(drawing, i, away);
        } else if (space.outside) {
            space.seat = besideMiddle(drawing, edgesOf[i], away);
            for (const std::size_t e : edgesOf[i]) {
                space.otherSeats.push_back(beside(drawing, e, length(drawing.runOf(e)) / 2, away));
            }
        } else {
            space.seat = centreOf(drawing, edgesOf[i]);
            space.otherSeats = aroundMiddle(drawing, edgesOf[i], space.seat);
        }
    }
}

} // namespace gusset
