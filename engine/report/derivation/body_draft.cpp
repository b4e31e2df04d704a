#include "report/derivation/body_draft.hpp"

#include "core/tolerance.hpp"
#include "report/derivation/axis_arrow.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace gusset {
namespace {

constexpr double kStart = 8;     // px from a joint to the near end of an arrow
constexpr double kLoadArm = 58;  // of a load or reaction
constexpr double kSeries = 16;   // px between two arrows on one ray
constexpr double kOneRay = 0.97; // cosine of the angle within which two arrows share a ray
constexpr PartRoom kOnPage{440, 200, 1100};
constexpr PartRoom kInColumn{240, 240, 250};
constexpr double kSmallest = 10; // of a letter in a space
constexpr double kBodyMargin = 8;

// How clear a direction is of the rays: 0 on one of them, 2 if all point the opposite way.
double freedom(const std::vector<Ray>& rays, Vec2 way) {
    double least = 2;
    for (const Ray& ray : rays) {
        least = std::min(least, 1 - dot(ray.way, way));
    }
    return least;
}

void drawArrow(Draft& draft, const BodyForce& force, Vec2 way, double from, double to) {
    const std::size_t joint = indexOf(draft.body, force.at);
    const Vec2 near = draft.places[joint] + from * way;
    const Vec2 far = draft.places[joint] + to * way;
    const bool outwards = dot(onPaper(force.along), way) > 0;
    draft.sketch.arrows.push_back(
        {outwards ? near : far, outwards ? far : near, force.ink, 1.75, force.thing});
    draft.rays[joint].push_back({way, to});
    draft.waiting.push_back({{.words = force.label,
                              .at = far,
                              .ink = force.ink,
                              .size = kLabelSize,
                              .thing = force.thing},
                             way});
}

// Px from the joint, beyond whatever is on the same ray.
double beginOn(const std::vector<Ray>& rays, Vec2 way) {
    double from = kStart;
    for (const Ray& ray : rays) {
        if (dot(ray.way, way) > kOneRay) {
            from = std::max(from, ray.reach + kSeries);
        }
    }
    return from;
}

// A load or reaction is drawn on the side of its joint that is clearer; on the other one, if that
// lets it begin nearer to the joint.
void drawOuter(Draft& draft, const BodyForce& force) {
    const std::vector<Ray>& rays = draft.rays[indexOf(draft.body, force.at)];
    const Vec2 along = onPaper(force.along);
    Vec2 way = freedom(rays, along) > freedom(rays, -along) + kHair ? along : -along;
    if (beginOn(rays, -way) < beginOn(rays, way)) { // the nearer end of what is taken
        way = -way;
    }
    const double from = beginOn(rays, way);
    const bool inclined =
        std::fabs(force.along.x) > kParallel && std::fabs(force.along.y) > kParallel;
    drawArrow(draft, force, way, from, from + (inclined ? draft.arm : kLoadArm) - kStart);
}

// Px per length unit: small enough for the whole to be seen at once, large enough for its shortest
// member.
double scaleOf(const Draft& draft, const std::vector<MemberId>& members) {
    const Notation& notation = draft.notation;
    const FreeBody& body = draft.body;
    const PartRoom& room = draft.room;
    const Vec2 first = notation.truss.joints[body.joints.front().at()].at;
    Extent box{first, first};
    const auto include = [&](Vec2 at) {
        box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y)};
        box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y)};
    };
    for (const JointId joint : body.joints) {
        include(notation.truss.joints[joint.at()].at);
    }
    std::for_each(draft.besides.begin(), draft.besides.end(), include);
    const Vec2 size = box.high - box.low;
    const double large = std::max(size.x, size.y);
    double shortest = large;
    for (const MemberId member : members) {
        shortest = std::min(shortest, length(memberVector(notation.truss, member)));
    }
    if (!(large > 0) || !(shortest > 0)) {
        return 1;
    }
    const double fits = std::min(size.x > 0 ? room.wide / size.x : HUGE_VAL,
                                 size.y > 0 ? room.high / size.y : HUGE_VAL);
    return std::min(std::max(fits, room.shortest / shortest), std::max(fits, room.widest / large));
}

} // namespace

PartRoom roomIn(SketchPaper paper) { return paper == SketchPaper::Page ? kOnPage : kInColumn; }

Vec2 onPaper(Vec2 inTruss) { return {inTruss.x, -inTruss.y}; }

std::size_t indexOf(const FreeBody& body, JointId joint) {
    return static_cast<std::size_t>(std::find(body.joints.begin(), body.joints.end(), joint) -
                                    body.joints.begin());
}

std::vector<MemberId> insideMembers(const Notation& notation, const FreeBody& body) {
    std::vector<bool> inside(notation.truss.joints.size());
    for (const JointId joint : body.joints) {
        inside[joint.at()] = true;
    }
    std::vector<MemberId> members;
    for (std::size_t i = 0; i < notation.truss.members.size(); ++i) {
        const Member& member = notation.truss.members[i];
        if (inside[member.a.at()] && inside[member.b.at()]) {
            members.push_back(MemberId{static_cast<int>(i)});
        }
    }
    return members;
}

double drawMembers(Draft& draft) {
    const Notation& notation = draft.notation;
    const FreeBody& body = draft.body;
    const std::vector<MemberId> members = insideMembers(notation, body);
    const double scale = scaleOf(draft, members);
    for (const JointId joint : body.joints) {
        draft.places.push_back(scale * onPaper(notation.truss.joints[joint.at()].at));
    }
    draft.rays.resize(body.joints.size());
    for (const MemberId id : members) {
        const Member& member = notation.truss.members[id.at()];
        const std::size_t a = indexOf(body, member.a);
        const std::size_t b = indexOf(body, member.b);
        const Vec2 way = onPaper(notation.working.structure.bars[id.at()].along);
        const double reach = length(draft.places[b] - draft.places[a]);
        draft.sketch.lines.push_back(
            {draft.places[a], draft.places[b], SketchInk::Muted, 2, false, id.index});
        draft.rays[a].push_back({way, reach});
        draft.rays[b].push_back({-way, reach});
    }
    return scale;
}

void drawForces(Draft& draft) {
    for (const BodyForce& force : draft.body.forces) {
        if (isCutMember(force)) {
            drawArrow(draft, force, onPaper(force.out), kStart, draft.arm);
        } else {
            drawOuter(draft, force);
        }
    }
}

// From the joint of the first cut member.
void drawAxis(Draft& draft) {
    if (!draft.axis) {
        return;
    }
    const auto cut = std::find_if(draft.body.forces.begin(), draft.body.forces.end(), isCutMember);
    const std::size_t joint = cut == draft.body.forces.end() ? 0 : indexOf(draft.body, cut->at);
    const Vec2 way = onPaper(*draft.axis);
    const Vec2 tip = draft.places[joint] + draft.arm * way;
    draw(draft.sketch, AxisArrow{draft.places[joint] + kStart * way, tip});
    draft.rays[joint].push_back({way, draft.arm});
    draft.waiting.push_back({axisName(tip, kLabelSize), way});
}

// The angle of an inclined force of the body, where the working has measured it.
void markAngles(Draft& draft, double radius) {
    std::size_t arrow = 0;
    for (const BodyForce& force : draft.body.forces) {
        const SketchArrow& drawn = draft.sketch.arrows[arrow++];
        const AngleLine* line = angleLineOf(draft.notation.working, force.along);
        if (line) {
            const Vec2 joint = draft.places[indexOf(draft.body, force.at)];
            const Vec2 middle = 0.5 * (drawn.tail + drawn.tip) - joint;
            draft.angles.push_back({joint, (1 / length(middle)) * middle, line, radius});
        }
    }
    for (AngleWords& words : drawAngles(draft.notation, draft.angles, draft.sketch)) {
        draft.waiting.push_back({std::move(words.words), words.towards, 3});
    }
}

void nameJoints(Draft& draft) {
    std::vector<Waiting> names;
    for (std::size_t i = 0; i < draft.places.size(); ++i) {
        draft.sketch.discs.push_back({draft.places[i], 3.5, SketchInk::Plain, false});
        Vec2 best{0, 1};
        for (const Vec2 way : {Vec2{0, -1}, Vec2{-0.6, -0.8}, Vec2{0.6, -0.8}, Vec2{-1, 0},
                               Vec2{1, 0}, Vec2{-0.6, 0.8}, Vec2{0.6, 0.8}}) {
            best = freedom(draft.rays[i], way) > freedom(draft.rays[i], best) + 0.01 ? way : best;
        }
        const std::string& label = draft.notation.truss.joints[draft.body.joints[i].at()].label;
        names.push_back(
            {{.words = {{label, RunStyle::Strong}}, .at = draft.places[i], .size = kLabelSize},
             best,
             7});
    }
    // Joint names are placed before forces, as they must stay close.
    std::move(draft.waiting.begin(), draft.waiting.end(), std::back_inserter(names));
    draft.waiting = std::move(names);
}

bool place(Draft& draft, SketchRoom& room, Waiting& waiting) {
    for (const double size : {waiting.words.size, kLabelSize, kSmallest}) {
        SketchWords words = waiting.words;
        words.size = size;
        if (placeWords(draft.sketch, room, words, waiting.places)) {
            return true;
        }
    }
    return placeNear(draft.sketch, room, std::move(waiting.words), waiting.towards, waiting.gap);
}

bool placeWords(Draft& draft) {
    SketchRoom room = roomOf(draft.sketch);
    bool all = true;
    for (Waiting& each : draft.waiting) {
        all = place(draft, room, each) && all;
    }
    return all;
}

// A chain of dimensions stops where a force has a lever arm in its direction.
void measureForces(Draft& draft) {
    for (std::size_t i = 0; i < draft.places.size(); ++i) {
        const JointId joint = draft.body.joints[i];
        MeasuredPoint point{draft.places[i], draft.notation.truss.joints[joint.at()].at};
        for (const BodyForce& force : draft.body.forces) {
            const bool here = force.at == joint;
            point.level = point.level || (here && std::fabs(force.along.y) > kParallel);
            point.upright = point.upright || (here && std::fabs(force.along.x) > kParallel);
        }
        draft.measured.push_back(point);
    }
}

Sketch completed(Draft& draft) {
    if (!draft.measured.empty()) {
        draft.moved = fitSketch(draft.sketch, 0);
        for (MeasuredPoint& point : draft.measured) {
            point.px = point.px + draft.moved;
        }
        addDimensions(draft.notation, draft.measured, draft.sketch);
    }
    draft.moved = draft.moved + fitSketch(draft.sketch, kBodyMargin);
    return std::move(draft.sketch);
}

} // namespace gusset
