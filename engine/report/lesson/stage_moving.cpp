#include "report/lesson/stage_moving.hpp"

#include "report/derivation/truss_marks.hpp"
#include "report/lesson/stage_draft.hpp"

#include <cmath>
#include <numbers>

namespace gusset {
namespace {

constexpr double kShown = 34; // px that the joint moves which moves most

} // namespace

Sketch movingTruss(const PhraseBook& book, const LessonShown& lesson, double phase,
                   const FigureSpace& space) {
    const Notation notation = notationOf({book, lesson.truss}, lesson.working);
    const FreeBody body = loadedBody(notation);
    const Mechanism& mechanism = lesson.working.mechanisms.front();
    const double swing = kShown * std::sin(2 * std::numbers::pi * phase);
    return largestIn(space, [&](const PartRoom& room) {
        Draft draft{notation, body, kPartArm, room};
        drawMembers(draft);
        const auto moved = [&](JointId joint) {
            return draft.places[joint.at()] + swing * onPaper(mechanism.velocities[joint.at()]);
        };
        for (SketchLine& member : draft.sketch.lines) {
            member.dashed = true;
        }
        for (const MemberId id : insideMembers(notation, body)) {
            const Member& member = lesson.truss.members[id.at()];
            draft.sketch.lines.push_back(
                {moved(member.a), moved(member.b), SketchInk::Accent, 3, false});
        }
        // Room for the whole swing, so that the drawing stays in its place.
        for (std::size_t i = 0; i < draft.places.size(); ++i) {
            const Vec2 most = kShown * onPaper(mechanism.velocities[i]);
            for (const double side : {-1.0, 1.0}) {
                holdRoom(draft.sketch, draft.places[i] + side * most);
            }
        }
        drawSupports(draft);
        nameJoints(draft);
        (void)placeWords(draft);
        return completed(draft);
    });
}

} // namespace gusset
