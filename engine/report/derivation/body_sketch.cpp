#include "report/derivation/body_sketch.hpp"

#include "core/tolerance.hpp"
#include "phrases/working/force_polygon.hpp"
#include "phrases/working/free_bodies.hpp"
#include "report/derivation/angle_marks.hpp"
#include "report/derivation/axis_arrow.hpp"
#include "report/derivation/body_forces.hpp"
#include "report/derivation/dimension_marks.hpp"
#include "report/derivation/force_polygon_sketch.hpp"
#include "report/sketch/sketch_room.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <optional>
#include <utility>

namespace gusset {
namespace {

constexpr double kStart = 8;      // px from a joint to the near end of an arrow
constexpr double kMemberArm = 92; // px from a lone joint to the far end of a member's arrow
constexpr double kPartArm = 60;   // the same for a part of the truss
constexpr double kLoadArm = 58;   // of a load or reaction
constexpr double kSeries = 16;    // px between two arrows on one ray
constexpr double kOneRay = 0.97;  // cosine of the angle within which two arrows share a ray
constexpr double kShortest = 62;  // px of a part's shortest member, if that fits
struct PartRoom {                 // px
    double wide; // width of the drawing of a part, if its members come out long enough
    double high;
    double widest; // upper limit of the width
};
constexpr PartRoom kOnPage{440, 280, 1100};
constexpr PartRoom kInColumn{240, 240, 250};
constexpr double kLabelSize = 14;
constexpr double kSmallest = 10; // of a letter in a space
constexpr double kBodyMargin = 8;

Vec2 onPaper(Vec2 inTruss) { return {inTruss.x, -inTruss.y}; }

// Anything drawn outwards from a joint.
struct Ray {
    Vec2 way; // unit vector, y down
    double reach = 0;
};

struct Waiting { // words to be placed once everything is drawn
    SketchWords words;
    Vec2 towards;
    double gap = 4;
    std::vector<Vec2> places{}; // exactly at the first of these that is free, if one is
};

struct Draft {
    const Notation& notation;
    const FreeBody& body;
    double arm = kMemberArm; // px from a joint to the far end of an inclined arrow
    PartRoom room = kOnPage;
    bool measured = false;      // with dimensions
    std::optional<Vec2> axis{}; // n, along which a sum of its forces is taken
    Sketch sketch{};
    std::vector<Vec2> places{};           // px, of each joint of the body
    std::vector<std::vector<Ray>> rays{}; // from each joint of the body
    std::vector<Waiting> waiting{};
    std::vector<AngleMark> angles{};
};

std::size_t indexOf(const FreeBody& body, JointId joint) {
    return static_cast<std::size_t>(std::find(body.joints.begin(), body.joints.end(), joint) -
                                    body.joints.begin());
}

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
    draft.sketch.arrows.push_back({outwards ? near : far, outwards ? far : near, force.ink, 1.75});
    draft.rays[joint].push_back({way, to});
    draft.waiting.push_back(
        {{.words = force.label, .at = far, .ink = force.ink, .size = kLabelSize}, way});
}

// A load or reaction is drawn on the side of its joint that is clearer; on the other one, if that
// is taken and the other is not; else beyond whatever is on the same ray.
void drawOuter(Draft& draft, const BodyForce& force) {
    const std::vector<Ray>& rays = draft.rays[indexOf(draft.body, force.at)];
    const Vec2 along = onPaper(force.along);
    Vec2 way = freedom(rays, along) > freedom(rays, -along) + kHair ? along : -along;
    if (freedom(rays, way) < 1 - kOneRay && freedom(rays, -way) > 1 - kOneRay) {
        way = -way;
    }
    double from = kStart;
    for (const Ray& ray : rays) {
        if (dot(ray.way, way) > kOneRay) {
            from = std::max(from, ray.reach + kSeries);
        }
    }
    const bool inclined =
        std::fabs(force.along.x) > kParallel && std::fabs(force.along.y) > kParallel;
    drawArrow(draft, force, way, from, from + (inclined ? draft.arm : kLoadArm) - kStart);
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

// The direction n, from the joint of the first cut member.
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

void place(Draft& draft, SketchRoom& room, Waiting& waiting) {
    // A small space gets a small letter rather than one outside.
    for (const double size : {waiting.words.size, kLabelSize, kSmallest}) {
        SketchWords words = waiting.words;
        words.size = size;
        if (placeWords(draft.sketch, room, words, waiting.places)) {
            return;
        }
    }
    placeNear(draft.sketch, room, std::move(waiting.words), waiting.towards, waiting.gap);
}

// Called when all words are placed.
Sketch completed(Draft& draft) {
    draft.sketch.says = sentenceOf(draft.notation, draft.body);
    if (draft.axis) {
        draft.sketch.says =
            sayPlain(draft.notation.book, phrase::kBodyAxis,
                     {{"body", draft.sketch.says},
                      {"direction", directionWord(draft.notation.book, *draft.axis)}});
    }
    if (draft.measured) {
        const Vec2 moved = fitSketch(draft.sketch, 0);
        for (Vec2& place : draft.places) {
            place = place + moved;
        }
        addDimensions(draft.notation, draft.body, draft.places, draft.sketch);
    }
    fitSketch(draft.sketch, kBodyMargin);
    return std::move(draft.sketch);
}

Sketch finished(Draft& draft) {
    nameJoints(draft);
    SketchRoom room = roomOf(draft.sketch);
    for (Waiting& each : draft.waiting) {
        place(draft, room, each);
    }
    return completed(draft);
}

// Arrows are longer where several angles share a quadrant, as each has its own mark.
double armOfJoint(const Notation& notation, const FreeBody& body) {
    std::array<int, 4> inQuarter{};
    for (const BodyForce& force : body.forces) {
        const Vec2 way = isCutMember(force) ? force.out : force.along;
        if (std::fabs(way.x) > kParallel && std::fabs(way.y) > kParallel) {
            ++inQuarter[(way.x > 0 ? 1u : 0u) + (way.y > 0 ? 2u : 0u)];
        }
    }
    const int most = *std::max_element(inQuarter.begin(), inQuarter.end());
    return kMemberArm + std::max(0, most - 1) * nextMark(notation.truss.classSettings.angles);
}

Sketch jointSketch(const Notation& notation, const FreeBody& body,
                   const std::optional<Vec2>& axis) {
    Draft draft{notation, body, armOfJoint(notation, body)};
    draft.axis = axis;
    draft.places = {{0, 0}};
    draft.rays.resize(1);
    drawForces(draft);
    drawAxis(draft);
    markAngles(draft, 30);
    return finished(draft);
}

// Members between joints of the body.
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

// Px per length unit: small enough for the whole to be seen at once, large enough for its shortest
// member.
double scaleOf(const Draft& draft, const std::vector<MemberId>& members) {
    const Notation& notation = draft.notation;
    const FreeBody& body = draft.body;
    const PartRoom& room = draft.room;
    Extent box{notation.truss.joints[body.joints.front().at()].at,
               notation.truss.joints[body.joints.front().at()].at};
    for (const JointId joint : body.joints) {
        const Vec2 at = notation.truss.joints[joint.at()].at;
        box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y)};
        box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y)};
    }
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
    return std::min(std::max(fits, kShortest / shortest), std::max(fits, room.widest / large));
}

// Draws the part to scale with the forces on it. Returns the scale, px per length unit.
double drawPart(Draft& draft) {
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
            {draft.places[a], draft.places[b], SketchInk::Muted, 2, false});
        draft.rays[a].push_back({way, reach});
        draft.rays[b].push_back({-way, reach});
    }
    drawForces(draft);
    return scale;
}

PartRoom roomIn(SketchPaper paper) { return paper == SketchPaper::Page ? kOnPage : kInColumn; }

Sketch partSketch(const Notation& notation, const FreeBody& body, SketchPaper paper,
                  const std::optional<Vec2>& axis) {
    // In a column there is no width to spare for dimensions.
    Draft draft{notation, body, kPartArm, roomIn(paper), paper == SketchPaper::Page};
    draft.axis = axis;
    drawPart(draft);
    drawAxis(draft);
    markAngles(draft, 24);
    return finished(draft);
}

// The letter of a space goes in its middle, or elsewhere in it.
void waitInSpace(Draft& draft, const PolygonSpace& space, double scale) {
    Waiting waiting{{.words = {{space.name, RunStyle::Variable}},
                     .at = scale * onPaper(space.seat),
                     .ink = SketchInk::Muted,
                     .size = 17},
                    {0, -1},
                    0};
    waiting.places.push_back(waiting.words.at);
    for (const Vec2 seat : space.otherSeats) {
        waiting.places.push_back(scale * onPaper(seat));
    }
    draft.waiting.push_back(std::move(waiting));
}

} // namespace

struct SpacesSketchTask::State {
    Notation notation;
    const ForcePolygon& polygon;
    SketchPaper paper;
    FreeBody body{};
    std::optional<Draft> draft{}; // set by begin()
    SketchRoom room{};
    std::size_t placed = 0; // how many of the draft's waiting words
    Sketch sketch{};

    void begin() {
        body = wholeFreeBody(notation);
        draft.emplace(Draft{notation, body, kPartArm, roomIn(paper)});
        const double scale = drawPart(*draft);
        // Letters must stay in their spaces; the labels of forces may give way.
        std::vector<Waiting> forces = std::exchange(draft->waiting, {});
        for (const PolygonSpace& space : polygon.spaces) {
            waitInSpace(*draft, space, scale);
        }
        std::move(forces.begin(), forces.end(), std::back_inserter(draft->waiting));
        nameJoints(*draft);
        room = roomOf(draft->sketch);
    }
    void finish() {
        sketch = completed(*draft);
        std::vector<RichLine> names;
        for (const PolygonSpace& space : polygon.spaces) {
            names.push_back(plainLine(space.name));
        }
        sketch.says = sayPlain(notation.book, phrase::kSpacesSays,
                               {{"spaces", listOf(notation.book, names)}});
    }
};

SpacesSketchTask::SpacesSketchTask(const Notation& notation, const ForcePolygon& polygon,
                                   SketchPaper paper)
    : state_(new State{notation, polygon, paper}) {}

SpacesSketchTask::~SpacesSketchTask() = default;
SpacesSketchTask::SpacesSketchTask(SpacesSketchTask&&) noexcept = default;
SpacesSketchTask& SpacesSketchTask::operator=(SpacesSketchTask&&) noexcept = default;

bool SpacesSketchTask::advance() {
    State& state = *state_;
    if (state.polygon.refusal != PolygonRefusal::None) {
        return true;
    }
    if (!state.draft) {
        state.begin();
    } else if (state.placed < state.draft->waiting.size()) {
        place(*state.draft, state.room, state.draft->waiting[state.placed++]);
    } else {
        state.finish();
        return true;
    }
    return false;
}

Progress SpacesSketchTask::progress() const {
    return {state_->placed, state_->draft ? state_->draft->waiting.size() : 0};
}

Sketch SpacesSketchTask::take() { return std::move(state_->sketch); }

Sketch spacesSketch(const Notation& notation, const ForcePolygon& polygon, SketchPaper paper) {
    SpacesSketchTask task(notation, polygon, paper);
    return runToEnd(task).take();
}

Sketch trussSketch(const Notation& notation, const std::vector<MemberWords>& members,
                   SketchPaper paper) {
    const FreeBody body = wholeFreeBody(notation);
    Draft draft{notation, body, kPartArm, roomIn(paper)};
    drawPart(draft);
    for (const MemberWords& member : members) {
        const Vec2 a = draft.places[member.a.at()];
        const Vec2 b = draft.places[member.b.at()];
        if (member.isCut) {
            draft.sketch.lines.push_back({a, b, SketchInk::Muted, 1.5, true});
        }
        const Vec2 along = b - a;
        const Vec2 across = (1 / length(along)) * Vec2{along.y, -along.x};
        draft.waiting.push_back(
            {{.words = member.words, .at = 0.5 * (a + b), .ink = member.ink, .size = kLabelSize},
             across.y > 0 ? -across : across,
             3});
    }
    return finished(draft);
}

std::vector<Sketch> bodySketches(const Notation& notation, std::size_t step, SketchPaper paper) {
    std::vector<Sketch> sketches;
    const std::optional<Vec2> axis = axisOn(notation.working, step);
    for (const FreeBody& body : freeBodiesOf(notation, step)) {
        if (body.joints.size() <= kLargestBody) {
            sketches.push_back(body.joints.size() == 1 ? jointSketch(notation, body, axis)
                                                       : partSketch(notation, body, paper, axis));
        }
    }
    return sketches;
}

} // namespace gusset
