#include "canvas/scene/figures.hpp"

#include "app/state/layout.hpp"
#include "canvas/scene/pick.hpp"
#include "canvas/scene/snap.hpp"
#include "core/number.hpp"
#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "model/truss/units.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr double kBesideFigure = 4; // px around its type that are still the figure

bool opensWith(Tool tool, const Figure& figure) {
    return tool == (std::holds_alternative<Measured>(figure.opens) ? Tool::Select : Tool::Member);
}

// How far outside of the box, 0 inside.
double outside(const Figure& figure, Vec2 pixel) {
    const Vec2 off = pixel - figure.at;
    return std::max({std::abs(off.x) - figure.half.x, std::abs(off.y) - figure.half.y, 0.0});
}

// Its type is easily smaller than a fingertip.
double reachOf(const Figure& figure) {
    return std::max(0.5 * kTouchTarget - std::min(figure.half.x, figure.half.y), kBesideFigure);
}

} // namespace

std::string lengthText(const Truss& truss, double value) {
    const std::string unit = symbolOf(truss.units.length);
    const std::string number = formatMeasured(value, truss.classSettings.decimalSign);
    return unit.empty() ? number : number + kThinSpace + unit;
}

const Figure* figureAt(const AppState& state, Vec2 pixel) {
    const Figure* nearest = nullptr;
    for (const Figure& figure : state.figures) {
        if (opensWith(state.tool, figure) && outside(figure, pixel) <= reachOf(figure) &&
            (nearest == nullptr || outside(figure, pixel) < outside(*nearest, pixel))) {
            nearest = &figure;
        }
    }
    if (nearest == nullptr || outside(*nearest, pixel) <= kBesideFigure) {
        return nearest;
    }
    return pick(state, pixel, outside(*nearest, pixel)) ? nullptr : nearest;
}

Outcome<Stretch> stretched(const Truss& truss, const Measured& measured, double value) {
    if (!(value > 0)) {
        return Issue{IssueCode::OutOfRange, "input",
                     "A dimension is longer than nothing: type a positive length, as 3."};
    }
    const double before = measured.to - measured.from;
    const double by = value - before;
    const Vec2 shift = measured.upright ? Vec2{0, by} : Vec2{by, 0};
    std::vector<JointId> beyond;
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        const Vec2 at = truss.joints[i].at;
        if ((measured.upright ? at.y : at.x) >= measured.to - kOneLine * before) {
            beyond.push_back(JointId{static_cast<int>(i)});
        }
    }
    Stretch stretch{shifted(truss, {}, beyond, shift), {}};
    stretch.edit.label = "Dimension of " + lengthText(truss, value);
    stretch.says = (beyond.size() == 1 ? "Joint " + truss.joints[beyond.front().at()].label
                                       : std::to_string(beyond.size()) + " joints") +
                   (measured.upright ? " from there upwards" : " from there to the right") +
                   " moved by " + lengthText(truss, by) + ".";
    return stretch;
}

} // namespace gusset
