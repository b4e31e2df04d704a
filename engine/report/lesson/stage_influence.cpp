#include "report/lesson/stage_influence.hpp"

#include "report/derivation/truss_marks.hpp"
#include "report/lesson/stage_draft.hpp"

#include <cmath>

namespace gusset {
namespace {

constexpr double kPlotHalf = 62; // px of the largest ordinate
constexpr double kBelow = 46;    // px from the truss to the plot
constexpr double kLoadLength = 48;

void drawUnitLoad(Draft& draft, std::size_t joint) {
    const Vec2 at = draft.places[joint];
    constexpr double kGap = 8;
    draft.sketch.arrows.push_back(
        {at - Vec2{0, kGap + kLoadLength}, at - Vec2{0, kGap}, SketchInk::Accent, 2.5});
    draft.rays[joint].push_back({{0, -1}, kGap + kLoadLength});
    draft.waiting.push_back({{.words = plainLine("1"),
                              .at = at - Vec2{0, kGap + kLoadLength},
                              .ink = SketchInk::Accent,
                              .size = kLabelSize},
                             {0, -1}});
}

double largestOf(const InfluenceByHand& line) {
    double largest = 0;
    for (const InfluenceOrdinate& ordinate : line.ordinates) {
        largest = std::max(largest, std::fabs(ordinate.value));
    }
    return largest;
}

double lowest(const Draft& draft) {
    double y = -HUGE_VAL;
    for (const Vec2 at : draft.places) {
        y = std::max(y, at.y);
    }
    return y;
}

// Positive ordinates upwards, each straight under its joint.
void drawTrace(Draft& draft, const InfluenceByHand& line, std::size_t traced) {
    const double largest = largestOf(line);
    const double scale = largest > 0 ? kPlotHalf / largest : 0;
    const double axis = lowest(draft) + kBelow + kPlotHalf;
    const auto across = [&](std::size_t i) { return draft.places[line.ordinates[i].at.at()].x; };
    Sketch& sketch = draft.sketch;
    sketch.lines.push_back({{across(0), axis},
                            {across(line.ordinates.size() - 1), axis},
                            SketchInk::Muted,
                            1.5,
                            false});
    Vec2 last;
    for (std::size_t i = 0; i < traced; ++i) {
        const double value = line.ordinates[i].value;
        const SketchInk ink = inkOfForce(value);
        const Vec2 foot{across(i), axis};
        const Vec2 tip{across(i), axis - scale * value};
        sketch.lines.push_back({foot, tip, ink, 1.5, false});
        if (i > 0) {
            sketch.lines.push_back({last, tip, SketchInk::Accent, 2.5, false});
        }
        const Notation& notation = draft.notation;
        draft.waiting.push_back({{.words = plainLine(formatNumber(value, notation.numbers)),
                                  .at = tip,
                                  .ink = ink,
                                  .size = kLabelSize},
                                 {0, value < 0 ? 1.0 : -1.0}});
        last = tip;
    }
}

} // namespace

Sketch tracedLine(const PhraseBook& book, const LessonShown& lesson, std::size_t traced,
                  const FigureSpace& space) {
    const InfluenceByHand& line = *lesson.traced;
    const Notation notation = notationOf({book, lesson.truss}, lesson.working);
    const FreeBody body = loadedBody(notation);
    return largestIn(space, [&](const PartRoom& room) {
        Draft draft{notation, body, kPartArm, room};
        drawMembers(draft);
        const std::vector<MemberId> members = insideMembers(notation, body);
        for (std::size_t i = 0; i < members.size(); ++i) {
            if (line.effect.kind == EffectKind::MemberForce && members[i] == line.effect.member) {
                light(draft.sketch, draft.sketch.lines[i]);
            }
        }
        drawSupports(draft);
        drawUnitLoad(draft, line.ordinates[traced - 1].at.at());
        nameJoints(draft);
        drawTrace(draft, line, traced);
        (void)placeWords(draft);
        return completed(draft);
    });
}

} // namespace gusset
