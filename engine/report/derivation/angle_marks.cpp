#include "report/derivation/angle_marks.hpp"

#include "core/tolerance.hpp"
#include "report/formula/slope_notation.hpp"
#include "report/text/formula.hpp"
#include "report/text/phrases.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kNextRing = 15;   // px between two arcs in one quadrant
constexpr double kTriangle = 38;   // px, hypotenuse of a slope triangle
constexpr double kLetterSize = 13; // px, font size

bool sameQuarter(Vec2 a, Vec2 b) { return a.x * b.x > 0 && a.y * b.y > 0; }

RichLine letterOf(const Notation& notation, const AngleLine& line) {
    Token angle = angleToken(line.angle);
    if (notation.truss.classSettings.angles == AngleStyle::Cosines) {
        angle.subscript += axisName(notation, true); // with the horizontal axis
    }
    return runsOf({angle});
}

AngleWords drawArc(const Notation& notation, const AngleMark& mark, Sketch& sketch) {
    const Vec2 level{mark.way.x > 0 ? 1.0 : -1.0, 0};
    const bool clockwise = cross(level, mark.way) > 0;
    sketch.arcs.push_back({mark.corner, mark.radius, clockwise ? level : mark.way,
                           clockwise ? mark.way : level, SketchInk::Muted});
    sketch.lines.push_back(
        {mark.corner, mark.corner + (mark.radius + 8) * level, SketchInk::Muted, 0.75, true});
    const Vec2 both = level + mark.way;
    const Vec2 middle = (1 / length(both)) * both;
    return {{.words = letterOf(notation, *mark.line),
             .at = mark.corner + mark.radius * middle,
             .ink = SketchInk::Muted,
             .size = kLetterSize},
            middle};
}

void drawTriangle(const Notation& notation, const AngleMark& mark, Sketch& sketch,
                  std::vector<AngleWords>& words) {
    const Vec2 from = mark.corner + mark.radius * mark.way;
    const Vec2 to = from + kTriangle * mark.way;
    const Vec2 right{to.x, from.y}; // its right angle
    sketch.lines.push_back({from, right, SketchInk::Muted, 1, false});
    sketch.lines.push_back({right, to, SketchInk::Muted, 1, false});
    const auto side = [&](double of, double other) {
        const Token token = sideOverLength(notation, of, other);
        return plainLine(token.kind == TokenKind::Fraction ? token.text
                                                           : givenLength(notation, of));
    };
    const Vec2 out{mark.way.x > 0 ? 1.0 : -1.0, mark.way.y > 0 ? -1.0 : 1.0};
    words.push_back({{.words = side(mark.line->run, mark.line->rise),
                      .at = 0.5 * (from + right),
                      .ink = SketchInk::Muted,
                      .size = kLetterSize},
                     {0, out.y}});
    words.push_back({{.words = side(mark.line->rise, mark.line->run),
                      .at = 0.5 * (right + to),
                      .ink = SketchInk::Muted,
                      .size = kLetterSize},
                     {out.x, 0}});
}

} // namespace

double nextMark(AngleStyle style) {
    return style == AngleStyle::Slopes ? kTriangle + 12 : kNextRing;
}

const AngleLine* angleLineOf(const Working& working, Vec2 along) {
    if (std::fabs(along.x) <= kParallel || std::fabs(along.y) <= kParallel) {
        return nullptr;
    }
    for (const Step& step : working.steps) {
        for (const AngleLine& line : step.angles) {
            const double turn = std::fabs(along.x) * line.rise - std::fabs(along.y) * line.run;
            if (std::fabs(turn) <= kParallel * line.length) {
                return &line;
            }
        }
    }
    return nullptr;
}

std::vector<AngleWords> drawAngles(const Notation& notation, std::vector<AngleMark> marks,
                                   Sketch& sketch) {
    const AngleStyle style = notation.truss.classSettings.angles;
    std::vector<AngleWords> words;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            if (marks[k].corner == marks[i].corner && sameQuarter(marks[k].way, marks[i].way)) {
                marks[i].radius = std::max(marks[i].radius, marks[k].radius + nextMark(style));
            }
        }
        if (style == AngleStyle::Slopes) {
            drawTriangle(notation, marks[i], sketch, words);
        } else {
            words.push_back(drawArc(notation, marks[i], sketch));
        }
    }
    return words;
}

} // namespace gusset
