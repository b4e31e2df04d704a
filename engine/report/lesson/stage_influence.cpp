#include "report/lesson/stage_influence.hpp"

#include "report/derivation/truss_marks.hpp"
#include "report/lesson/stage_draft.hpp"

#include <cmath>

namespace gusset {
namespace {

constexpr double kPlotHalf = 62; // px of the largest ordinate
constexpr double kBelow = 46;    // px from the truss to the plot
constexpr double kLoadLength = 48;

void drawUnitLoad(Draft& draft, Vec2 at) {
    constexpr double kGap = 8;
    draft.sketch.arrows.push_back(
        {at - Vec2{0, kGap + kLoadLength}, at - Vec2{0, kGap}, SketchInk::Accent, 2.5});
    draft.waiting.push_back({{.words = plainLine("1"),
                              .at = at - Vec2{0, kGap + kLoadLength},
                              .ink = SketchInk::Accent,
                              .size = kLabelSize},
                             {0, -1}});
}

// Between two joints of the path, which stringers join.
Vec2 placeOfLoad(const Draft& draft, const InfluenceByHand& line, std::size_t traced,
                 double along) {
    const Vec2 to = draft.places[line.ordinates[traced - 1].at.at()];
    const Vec2 from = traced > 1 ? draft.places[line.ordinates[traced - 2].at.at()] : to;
    return from + along * (to - from);
}

// The room of the load at every joint of the path, with its "1".
void holdLoads(Draft& draft, const InfluenceByHand& line) {
    constexpr double kHigh = kLoadLength + 34;
    for (const InfluenceOrdinate& ordinate : line.ordinates) {
        holdRoom(draft.sketch, draft.places[ordinate.at.at()] - Vec2{0, kHigh});
    }
}

// A member, or the joint at which a reaction is wanted.
void lightEffect(Draft& draft, const InfluenceByHand& line, const std::vector<MemberId>& members) {
    for (std::size_t i = 0; i < members.size(); ++i) {
        if (line.effect.kind == EffectKind::MemberForce && members[i] == line.effect.member) {
            light(draft.sketch, draft.sketch.lines[i]);
        }
    }
    if (line.effect.kind != EffectKind::MemberForce) {
        draft.sketch.discs.push_back(
            {draft.places[line.effect.joint.at()], 9, SketchInk::Accent, false});
    }
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

struct TraceAxis { // px
    double y = 0;
    double scale = 0; // of an ordinate of 1
};

TraceAxis axisUnder(const Draft& draft, const InfluenceByHand& line) {
    const double largest = largestOf(line);
    return {lowest(draft) + kBelow + kPlotHalf, largest > 0 ? kPlotHalf / largest : 0};
}

// Positive ordinates upwards, each straight under its joint; the last as far as the load has come.
void drawTrace(Draft& draft, const InfluenceByHand& line, std::size_t traced, double along) {
    const TraceAxis axis = axisUnder(draft, line);
    const auto across = [&](std::size_t i) { return draft.places[line.ordinates[i].at.at()].x; };
    const auto tipOf = [&](std::size_t i) {
        return Vec2{across(i), axis.y - axis.scale * line.ordinates[i].value};
    };
    Sketch& sketch = draft.sketch;
    sketch.lines.push_back({{across(0), axis.y},
                            {across(line.ordinates.size() - 1), axis.y},
                            SketchInk::Muted,
                            1.5,
                            false});
    for (std::size_t i = 0; i < traced; ++i) {
        const bool isReached = i + 1 < traced || along >= 1;
        const Vec2 tip = tipOf(i);
        if (i > 0) {
            const Vec2 last = tipOf(i - 1);
            const Vec2 end = isReached ? tip : last + along * (tip - last);
            sketch.lines.push_back({last, end, SketchInk::Accent, 2.5, false});
        }
        if (!isReached) {
            continue;
        }
        const double value = line.ordinates[i].value;
        sketch.lines.push_back({{across(i), axis.y}, tip, inkOfForce(value), 1.5, false});
        draft.waiting.push_back({{.words = plainLine(formatNumber(value, draft.notation.numbers)),
                                  .at = tip,
                                  .ink = inkOfForce(value),
                                  .size = kLabelSize},
                                 {0, value < 0 ? 1.0 : -1.0}});
    }
}

// The room of the whole line, with its numbers.
void holdTrace(Draft& draft, const InfluenceByHand& line) {
    const Vec2 numbers{44, 26};
    const TraceAxis axis = axisUnder(draft, line);
    for (const InfluenceOrdinate& ordinate : line.ordinates) {
        const Vec2 tip{draft.places[ordinate.at.at()].x, axis.y - axis.scale * ordinate.value};
        holdRoom(draft.sketch, tip - numbers);
        holdRoom(draft.sketch, tip + numbers);
    }
}

// The truss, and what `draw` adds to it.
template <class Draw>
Sketch loadedTruss(const PhraseBook& book, const LessonShown& lesson, const FigureSpace& space,
                   Draw draw) {
    const InfluenceByHand& line = *lesson.traced;
    const Notation notation = notationOf({book, lesson.truss}, lesson.working);
    const FreeBody body = loadedBody(notation);
    return largestIn(space, [&](const PartRoom& room) {
        Draft draft{notation, body, kPartArm, room};
        drawMembers(draft);
        lightEffect(draft, line, insideMembers(notation, body));
        drawSupports(draft);
        holdLoads(draft, line);
        draw(draft, line);
        return completed(draft);
    });
}

} // namespace

Sketch tracedLine(const PhraseBook& book, const LessonShown& lesson, std::size_t traced,
                  double along, const FigureSpace& space) {
    return loadedTruss(book, lesson, space, [&](Draft& draft, const InfluenceByHand& line) {
        holdTrace(draft, line);
        drawUnitLoad(draft, placeOfLoad(draft, line, traced, along));
        nameJoints(draft);
        drawTrace(draft, line, traced, along);
        (void)placeWords(draft);
    });
}

Sketch trussUnderUnitLoad(const PhraseBook& book, const LessonShown& lesson, JointId joint,
                          const FigureSpace& space) {
    return loadedTruss(book, lesson, space, [&](Draft& draft, const InfluenceByHand&) {
        drawUnitLoad(draft, draft.places[joint.at()]);
        draft.rays[joint.at()].push_back({{0, -1}, kLoadLength});
        nameJoints(draft);
        (void)placeWords(draft);
    });
}

} // namespace gusset
