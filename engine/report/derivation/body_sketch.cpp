#include "report/derivation/body_sketch.hpp"

#include "core/tolerance.hpp"
#include "phrases/working/force_polygon.hpp"
#include "phrases/working/free_bodies.hpp"
#include "report/derivation/axis_arrow.hpp"
#include "report/derivation/body_draft.hpp"
#include "report/derivation/force_polygon_sketch.hpp"
#include "report/derivation/moment_centre.hpp"
#include "report/derivation/truss_marks.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

namespace gusset {
namespace {

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

Sketch finished(Draft& draft) {
    nameJoints(draft);
    (void)placeWords(draft);
    Sketch sketch = completed(draft);
    sketch.says = sentenceOf(draft.notation, draft.body);
    if (draft.axis) {
        sketch.says = sayPlain(draft.notation.book, phrase::kBodyAxis,
                               {{"body", sketch.says},
                                {"direction", directionWord(draft.notation.book, *draft.axis)}});
    }
    return sketch;
}

Sketch jointSketch(const Notation& notation, const FreeBody& body, const std::optional<Vec2>& axis,
                   double share = 1) {
    Draft draft{notation, body, share * armOfJoint(notation, body)};
    draft.axis = axis;
    draft.places = {{0, 0}};
    draft.rays.resize(1);
    drawForces(draft);
    drawAxis(draft);
    markAngles(draft, 30);
    return finished(draft);
}

Sketch partSketch(const Notation& notation, const FreeBody& body, std::size_t step,
                  const PartRoom& room, bool measures) {
    Draft draft{notation, body, kPartArm, room};
    const std::optional<MomentCentre> centre = centreOnBody(notation.working, step);
    if (centre) {
        for (const JointId joint : jointsTakenBeyond(notation, body, *centre)) {
            draft.besides.push_back(notation.truss.joints[joint.at()].at);
        }
        if (isWithinReach(notation, body, *centre)) {
            draft.besides.push_back(centre->at);
        }
    }
    const double scale = drawMembers(draft);
    drawForces(draft);
    draft.axis = axisOn(notation.working, step);
    drawAxis(draft);
    markAngles(draft, 24);
    if (centre) {
        drawCentre(draft, *centre, scale);
    }
    if (measures) {
        measureForces(draft);
    } else {
        draft.measured.clear();
    }
    return finished(draft);
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
        const double scale = drawMembers(*draft);
        drawForces(*draft);
        letterSpaces(*draft, polygon, scale);
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
        (void)place(*state.draft, state.room, state.draft->waiting[state.placed++]);
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
                   const PartRoom& room) {
    const bool isFound = notation.working.complete;
    const FreeBody body = isFound ? wholeFreeBody(notation) : loadedBody(notation);
    Draft draft{notation, body, kPartArm, room};
    drawMembers(draft);
    if (!isFound) {
        drawSupports(draft);
    }
    drawForces(draft);
    for (const MemberWords& member : members) {
        const Vec2 a = draft.places[member.a.at()];
        const Vec2 b = draft.places[member.b.at()];
        if (member.isCut) {
            draft.sketch.lines.push_back({a, b, SketchInk::Muted, 1.5, true});
        }
        if (member.words.empty()) {
            continue;
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

Sketch trussSketch(const Notation& notation, const std::vector<MemberWords>& members,
                   SketchPaper paper) {
    return trussSketch(notation, members, roomIn(paper));
}

namespace {

bool fits(const Sketch& sketch, const FigureSpace& space) {
    return sketch.width <= space.wide && sketch.height <= space.high;
}

// With its dimensions if it need not become much smaller for them.
Sketch partSketchIn(const Notation& notation, const FreeBody& body, std::size_t step,
                    const FigureSpace& space) {
    constexpr double kSmallestShare = 0.25;
    constexpr double kWorthDimensions = 0.45;
    Sketch sketch;
    for (const bool measures : {true, false}) {
        for (double share = 1; share > (measures ? kWorthDimensions : kSmallestShare);
             share *= 0.92) {
            const PartRoom room{share * space.wide, share * space.high, share * space.wide, 0};
            sketch = partSketch(notation, body, step, room, measures);
            if (fits(sketch, space)) {
                return sketch;
            }
        }
    }
    return sketch;
}

// With the longest arrows that fit, or those that miss by least.
Sketch jointSketchIn(const Notation& notation, const FreeBody& body,
                     const std::optional<Vec2>& axis, const FigureSpace& space) {
    constexpr double kShortest = 0.45; // arrows, over the usual ones
    const auto excess = [&](const Sketch& sketch) {
        return std::max({1.0, sketch.width / space.wide, sketch.height / space.high});
    };
    Sketch best = jointSketch(notation, body, axis);
    for (double share = 0.9; share > kShortest && excess(best) > 1; share -= 0.1) {
        Sketch sketch = jointSketch(notation, body, axis, share);
        if (excess(sketch) < excess(best)) {
            best = std::move(sketch);
        }
    }
    return best;
}

} // namespace

std::vector<Sketch> bodySketchesIn(const Notation& notation, std::size_t step,
                                   const FigureSpace& space) {
    std::vector<Sketch> sketches;
    const std::optional<Vec2> axis = axisOn(notation.working, step);
    const std::vector<FreeBody> bodies = freeBodiesOf(notation, step);
    const FigureSpace each{
        space.wide / static_cast<double>(std::max<std::size_t>(1, bodies.size())), space.high};
    for (const FreeBody& body : bodies) {
        if (body.joints.size() <= kLargestBody) {
            sketches.push_back(body.joints.size() == 1 ? jointSketchIn(notation, body, axis, each)
                                                       : partSketchIn(notation, body, step, each));
        }
    }
    return sketches;
}

Sketch bodySketch(const Notation& notation, const FreeBody& body, SketchPaper paper) {
    return body.joints.size() == 1
               ? jointSketch(notation, body, std::nullopt)
               : partSketch(notation, body, 0, roomIn(paper), paper == SketchPaper::Page);
}

std::vector<Sketch> bodySketches(const Notation& notation, std::size_t step, SketchPaper paper) {
    std::vector<Sketch> sketches;
    const std::optional<Vec2> axis = axisOn(notation.working, step);
    for (const FreeBody& body : freeBodiesOf(notation, step)) {
        if (body.joints.size() <= kLargestBody) {
            // In a column there is no width to spare for dimensions.
            sketches.push_back(
                body.joints.size() == 1
                    ? jointSketch(notation, body, axis)
                    : partSketch(notation, body, step, roomIn(paper), paper == SketchPaper::Page));
        }
    }
    return sketches;
}

} // namespace gusset
