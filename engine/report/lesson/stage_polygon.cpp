#include "report/lesson/stage_polygon.hpp"

#include "report/derivation/force_polygon_sketch.hpp"
#include "report/derivation/truss_marks.hpp"
#include "report/lesson/stage_draft.hpp"

namespace gusset {
Sketch polygonTruss(const PhraseBook& book, const LessonShown& lesson, std::size_t drawn,
                    const FigureSpace& space) {
    const Notation notation = notationOf({book, lesson.truss}, lesson.working);
    const FreeBody body = wholeFreeBody(notation);
    const MemberId lit = lesson.polygon->lines[drawn - 1].member;
    return largestIn(space, [&](const PartRoom& room) {
        Draft draft{notation, body, kPartArm, room};
        const double scale = drawMembers(draft);
        const std::vector<MemberId> members = insideMembers(notation, body);
        for (std::size_t i = 0; i < members.size(); ++i) {
            if (members[i] == lit) {
                light(draft.sketch, draft.sketch.lines[i]);
            }
        }
        drawForces(draft);
        letterSpaces(draft, *lesson.polygon, scale);
        nameJoints(draft);
        (void)placeWords(draft);
        return completed(draft);
    });
}

Sketch polygonLines(const PhraseBook& book, const LessonShown& lesson, std::size_t drawn,
                    const FigureSpace& space) {
    constexpr double kAround = 60; // px, for its letters
    PolygonLook look;
    look.drawn = drawn;
    look.lit = drawn - 1;
    look.width = std::max(60.0, space.wide - kAround);
    look.height = std::max(60.0, space.high - kAround);
    return polygonDrawing({book, lesson.truss}, *lesson.polygon, look).sketch;
}

} // namespace gusset
