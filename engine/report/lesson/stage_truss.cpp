#include "report/lesson/stage_truss.hpp"

#include "phrases/working/paper.hpp"
#include "report/derivation/truss_marks.hpp"
#include "report/lesson/stage_draft.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kBand = 7; // px, half the width of what lights a member

struct KnownForces {
    std::vector<std::optional<double>> members;
    std::vector<double> reactions; // 0: not shown
};

void learn(KnownForces& known, const Found& found) {
    if (found.symbol.kind == SymbolKind::MemberForce) {
        known.members[found.symbol.member.at()] = found.value;
    } else if (found.symbol.kind == SymbolKind::Reaction) {
        known.reactions[found.symbol.restraint.at()] = found.value;
    }
}

KnownForces knownAt(const LessonShown& lesson, const StagePlace& place) {
    KnownForces known{std::vector<std::optional<double>>(lesson.truss.members.size()),
                      std::vector<double>(lesson.working.structure.restraints.size())};
    const LessonStep& step = lesson.steps[place.step];
    if (place.hidesValues || !step.step) {
        return known;
    }
    for (std::size_t i = 0; i < *step.step; ++i) { // also of steps that the lesson leaves out
        for (const Found& found : lesson.working.steps[i].found) {
            learn(known, found);
        }
    }
    for (const Found& found : step.strokes[place.stroke].told) {
        learn(known, found);
    }
    return known;
}

void lightAll(Draft& draft, const std::vector<MemberId>& drawn, const Step& step) {
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        if (std::find(step.members.begin(), step.members.end(), drawn[i]) != step.members.end()) {
            light(draft.sketch, draft.sketch.lines[i]);
        }
    }
    if (step.joint.valid()) {
        draft.sketch.discs.push_back(
            {draft.places[indexOf(draft.body, step.joint)], 9, SketchInk::Accent, false});
    }
}

TrussPicture drawnIn(const Notation& notation, const LessonShown& lesson, const StagePlace& place,
                     const PartRoom& room) {
    const KnownForces known = knownAt(lesson, place);
    const FreeBody body = finalFreeBody(notation, known.reactions);
    Draft draft{notation, body, kPartArm, room};
    const double scale = drawMembers(draft);
    const std::vector<MemberId> members = insideMembers(notation, body);
    if (const std::optional<std::size_t> step = lesson.steps[place.step].step) {
        const Step& spoken = lesson.working.steps[*step];
        if (spoken.kind != StepKind::Summary) {
            lightAll(draft, members, spoken);
        }
    }
    for (std::size_t i = 0; i < members.size(); ++i) {
        const bool isAsked =
            std::find(lesson.asked.begin(), lesson.asked.end(), members[i]) != lesson.asked.end();
        draft.sketch.lines[i].width = isAsked ? 4 : 2;
        if (const std::optional<double> force = known.members[members[i].at()]) {
            writeBeside(draft, i, inkOfForce(*force), forceOfMember(notation, *force));
        } else if (isAsked) {
            draft.sketch.lines[i].ink = SketchInk::Accent;
        }
    }
    drawSupports(draft);
    drawForces(draft);
    nameJoints(draft);
    (void)placeWords(draft);
    Sketch sketch = completed(draft);
    return {std::move(sketch), {draft.moved, scale}};
}

} // namespace

void light(Sketch& sketch, const SketchLine& member) {
    const Vec2 way = member.b - member.a;
    const double size = length(way);
    if (!(size > 0)) {
        return;
    }
    const Vec2 side = (kBand / size) * Vec2{-way.y, way.x};
    sketch.areas.push_back(
        {{member.a + side, member.b + side, member.b - side, member.a - side}, SketchInk::Accent});
}

TrussPicture stageTruss(const PhraseBook& book, const LessonShown& lesson, const StagePlace& place,
                        const FigureSpace& space) {
    const Notation notation = notationOf({book, lesson.truss}, lesson.working);
    TrussPicture picture = largestIn(
        space, [&](const PartRoom& room) { return drawnIn(notation, lesson, place, room); });
    picture.sketch.says = sayPlain(book, phrase::kFigureGiven);
    return picture;
}

} // namespace gusset
