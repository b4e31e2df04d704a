#include "report/derivation/axis_arrow.hpp"

namespace gusset {

std::optional<Vec2> axisOn(const Working& working, std::size_t step) {
    const std::vector<Step>& steps = working.steps;
    for (std::size_t i = step; i < steps.size() && steps[i].body == steps[step].body; ++i) {
        for (const Equation& equation : steps[i].equations) {
            if (equation.kind == EquationKind::SumAlong) {
                return equation.along;
            }
        }
    }
    return std::nullopt;
}

void draw(Sketch& sketch, const AxisArrow& axis) {
    constexpr double kHead = 7; // px
    const Vec2 along = axis.tip - axis.tail;
    const Vec2 way = (1 / length(along)) * along;
    const Vec2 across{-way.y, way.x};
    sketch.lines.push_back({axis.tail, axis.tip, SketchInk::Muted, 1, true});
    for (const double side : {-0.5, 0.5}) {
        sketch.lines.push_back(
            {axis.tip, axis.tip - kHead * way + side * kHead * across, SketchInk::Muted, 1, false});
    }
}

SketchWords axisName(Vec2 tip, double size) {
    return {.words = {{"n", RunStyle::Variable}}, .at = tip, .ink = SketchInk::Muted, .size = size};
}

} // namespace gusset
