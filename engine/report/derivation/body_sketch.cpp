#include "report/derivation/body_sketch.hpp"

#include "core/tolerance.hpp"
#include "phrases/working/force_polygon.hpp"
#include "report/derivation/body_draft.hpp"
#include "report/derivation/body_forces.hpp"
#include "report/derivation/force_polygon_sketch.hpp"
#include "report/derivation/moment_centre.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
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
    return sketch;
}

Sketch jointSketch(const Notation& notation, const FreeBody& body) {
    Draft draft{notation, body, armOfJoint(notation, body)};
    draft.places = {{0, 0}};
    draft.rays.resize(1);
    drawForces(draft);
    markAngles(draft, 30);
    return finished(draft);
}

Sketch partSketch(const Notation& notation, const FreeBody& body, std::size_t step,
                  SketchPaper paper) {
    Draft draft{notation, body, kPartArm, roomIn(paper)};
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
    markAngles(draft, 24);
    if (centre) {
        drawCentre(draft, *centre, scale);
    }
    if (paper == SketchPaper::Page) {
        measureForces(draft);
    } else { // in a column there is no width to spare for dimensions
        draft.measured.clear();
    }
    return finished(draft);
}

// The letter of a space goes in its middle.
void waitAt(Draft& draft, const std::string& name, Vec2 place) {
    draft.waiting.push_back(
        {{.words = {{name, RunStyle::Variable}}, .at = place, .ink = SketchInk::Muted, .size = 17},
         {0, -1},
         0,
         {place}});
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
        for (const PolygonSpace& space : polygon.spaces) {
            waitAt(*draft, space.name, scale * onPaper(space.seat));
        }
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

std::vector<Sketch> bodySketches(const Notation& notation, std::size_t step, SketchPaper paper) {
    std::vector<Sketch> sketches;
    for (const FreeBody& body : freeBodiesOf(notation, step)) {
        if (body.joints.size() <= kLargestBody) {
            sketches.push_back(body.joints.size() == 1 ? jointSketch(notation, body)
                                                       : partSketch(notation, body, step, paper));
        }
    }
    return sketches;
}

} // namespace gusset
