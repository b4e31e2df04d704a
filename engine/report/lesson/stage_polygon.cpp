#include "report/lesson/stage_polygon.hpp"

#include "report/derivation/force_polygon_sketch.hpp"
#include "report/derivation/truss_marks.hpp"
#include "report/lesson/stage_draft.hpp"

namespace gusset {
namespace {

// The member, the load or the reaction whose line is drawn.
void lightTwin(Draft& draft, const PolygonLine& line, const std::vector<MemberId>& members) {
    for (std::size_t i = 0; i < members.size(); ++i) {
        if (members[i] == line.member) {
            light(draft.sketch, draft.sketch.lines[i]);
        }
    }
    for (std::size_t i = 0; i < draft.body.forces.size(); ++i) { // an arrow for each
        const BodyForce& force = draft.body.forces[i];
        if (force.at == line.joint && force.of.has_value() == line.reaction) {
            const SketchArrow& arrow = draft.sketch.arrows[i];
            light(draft.sketch, {arrow.tail, arrow.tip});
        }
    }
}

} // namespace

Sketch polygonTruss(const PhraseBook& book, const LessonShown& lesson, std::size_t drawn,
                    const FigureSpace& space) {
    const Notation notation = notationOf({book, lesson.truss}, lesson.working);
    const FreeBody body = wholeFreeBody(notation);
    const std::vector<MemberId> members = insideMembers(notation, body);
    return largestIn(space, [&](const PartRoom& room) {
        Draft draft{notation, body, kPartArm, room};
        const double scale = drawMembers(draft);
        drawForces(draft);
        lightTwin(draft, lesson.polygon->lines[drawn - 1], members);
        letterSpaces(draft, *lesson.polygon, scale);
        nameJoints(draft);
        (void)placeWords(draft);
        return completed(draft);
    });
}

Sketch polygonLines(const PhraseBook& book, const LessonShown& lesson, std::size_t drawn,
                    const FigureSpace& space) {
    constexpr double kAround = 90; // px, for its letters and its scale
    PolygonLook look;
    look.drawn = drawn;
    look.lit = drawn - 1;
    look.width = std::max(60.0, space.wide - kAround);
    look.height = std::max(60.0, space.high - kAround);
    look.holdsRoom = true;
    return polygonDrawing({book, lesson.truss}, *lesson.polygon, look).sketch;
}

} // namespace gusset
