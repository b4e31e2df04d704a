// Lessons whose drawing grows: a force polygon line by line, an influence line as its load moves.

#include "phrases/working/lesson.hpp"
#include "report/derivation/force_polygon_text.hpp"
#include "report/derivation/influence_by_hand_text.hpp"
#include "report/formula/notation.hpp"
#include "report/lesson/lesson.hpp"
#include "report/lesson/spoken.hpp"
#include "report/text/formula.hpp"

#include <utility>

namespace gusset {
namespace {

Stroke strokeSaying(std::string says) {
    Stroke stroke;
    stroke.spoken = std::move(says);
    return stroke;
}

std::string lineSaid(const Writer& writer, const ForcePolygon& polygon, std::size_t line) {
    return spokenLine(writer.book, plainLine(polygonLineSentence(writer, polygon, line)));
}

// Of one line, where the polygon's own sentence is of several.
std::string edgeSaid(const Writer& writer, const ForcePolygon& polygon, std::size_t i) {
    const PolygonLine& line = polygon.lines[i];
    const std::string name = polygonLineName(polygon, line);
    const RichLine said =
        line.member.valid()
            ? say(writer.book, phrase::kEdgeOfMember,
                  {{"line", name}, {"member", memberName(writer.truss, line.member)}})
            : say(writer.book, line.reaction ? phrase::kEdgeOfReaction : phrase::kEdgeOfLoad,
                  {{"line", name}, {"joint", writer.truss.joints[line.joint.at()].label}});
    return spokenLine(writer.book, said);
}

// "Under the load at C: 0.75."
std::string ordinateSaid(const Writer& writer, const InfluenceByHand& line, std::size_t i) {
    const InfluenceOrdinate& ordinate = line.ordinates[i];
    const Notation notation = notationOf({writer.book, line.unloaded}, ordinate.chain);
    return sayPlain(
        writer.book, phrase::kUnderLoadAt,
        {{"joint", line.unloaded.joints[ordinate.at.at()].label},
         {"value", spokenFormula(writer.book,
                                 {numberToken(formatNumber(ordinate.value, notation.numbers))})}});
}

// The load stands on the truss while its ordinate is found. The ordinates have a step each, before
// the table of them and the shape of the line, unless one equation gives them all.
void placeLoads(LessonShown& lesson, const InfluenceByHand& line) {
    constexpr std::size_t kAfter = 2;
    if (line.law) {
        return;
    }
    const std::size_t first = lesson.steps.size() - kAfter - line.ordinates.size();
    for (std::size_t i = 0; i < line.ordinates.size(); ++i) {
        lesson.steps[first + i].unitLoad = line.ordinates[i].at;
    }
}

} // namespace

LessonShown lessonOf(const PhraseBook& book, const Truss& truss, Working working,
                     const ForcePolygon& polygon) {
    LessonShown lesson{truss, std::move(working)};
    lesson.polygon = std::make_shared<ForcePolygon>(polygon);
    const Writer writer{book, lesson.truss};
    LessonStep step;
    step.title = say(book, phrase::kTitlePolygon);
    step.subject = "polygon";
    for (std::size_t i = 0; i < polygon.lines.size(); ++i) {
        Stroke stroke = strokeSaying(lineSaid(writer, polygon, i));
        if (i > 0 && stroke.spoken == lineSaid(writer, polygon, i - 1)) { // said of several lines
            stroke.spoken = edgeSaid(writer, polygon, i);
        }
        stroke.drawn = i + 1;
        step.strokes.push_back(std::move(stroke));
    }
    lesson.steps.push_back(std::move(step));
    return lesson;
}

LessonShown lessonOf(const PhraseBook& book, const Truss& truss, Working working,
                     const InfluenceByHand& line) {
    LessonShown lesson =
        lessonOf(book, truss, std::move(working), influencePassages({book, truss}, line));
    for (LessonStep& step : lesson.steps) { // the truss has the stage, on which its load moves
        step.drawings.clear();
    }
    if (line.end != InfluenceEnd::Complete) {
        return lesson;
    }
    lesson.traced = std::make_shared<InfluenceByHand>(line);
    placeLoads(lesson, line);
    LessonStep step;
    step.title = say(book, phrase::kTitleTraced);
    step.subject = "traced";
    for (std::size_t i = 0; i < line.ordinates.size(); ++i) {
        Stroke stroke = strokeSaying(ordinateSaid({book, lesson.truss}, line, i));
        stroke.traced = i + 1;
        step.strokes.push_back(std::move(stroke));
    }
    lesson.steps.push_back(std::move(step));
    return lesson;
}

} // namespace gusset
