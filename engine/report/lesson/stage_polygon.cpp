#include "report/lesson/stage_polygon.hpp"

#include "report/derivation/force_polygon_sketch.hpp"
#include "report/lesson/stage_draft.hpp"

namespace gusset {
namespace {

void letterSpaces(Draft& draft, const ForcePolygon& polygon, double scale) {
    for (const PolygonSpace& space : polygon.spaces) {
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
}

} // namespace

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
        // Letters must stay in their spaces; the labels of forces may give way.
        std::vector<Waiting> forces = std::exchange(draft.waiting, {});
        letterSpaces(draft, *lesson.polygon, scale);
        std::move(forces.begin(), forces.end(), std::back_inserter(draft.waiting));
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
