#include "canvas/scene/figures.hpp"

#include "app/state/layout.hpp"
#include "canvas/scene/pick.hpp"
#include "canvas/scene/snap.hpp"
#include "core/number.hpp"
#include "core/tolerance.hpp"
#include "model/truss/units.hpp"
#include "phrases/history.hpp"
#include "phrases/picked.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr double kBesideFigure = 4; // px around its text that still count as the label

bool opensWith(Tool tool, const Figure& figure) {
    if (std::holds_alternative<LoadField>(figure.opens)) {
        return tool == Tool::Load || tool == Tool::Select;
    }
    return tool == (std::holds_alternative<Measured>(figure.opens) ? Tool::Select : Tool::Member);
}

// The distance outside the box, 0 inside.
double outside(const Figure& figure, Vec2 pixel) {
    const Vec2 off = pixel - figure.at;
    return std::max({std::abs(off.x) - figure.half.x, std::abs(off.y) - figure.half.y, 0.0});
}

// Its text may be smaller than a fingertip.
double reachOf(const Figure& figure) {
    return std::max(0.5 * kTouchTarget - std::min(figure.half.x, figure.half.y), kBesideFigure);
}

} // namespace

std::string lengthText(const Truss& truss, double value) {
    const std::string unit = symbolOf(truss.units.length);
    const std::string number = formatMeasured(value, truss.classSettings.decimalSign);
    return withUnit(number, unit);
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

namespace {

std::string movedText(const Writer& writer, const std::vector<JointId>& beyond, bool upright,
                      double by) {
    const std::string length = lengthText(writer.truss, by);
    if (beyond.size() == 1) {
        return sayPlain(
            writer, upright ? phrase::kJointMovedUp : phrase::kJointMovedRight,
            {{"joint", writer.truss.joints[beyond.front().at()].label}, {"length", length}});
    }
    return sayPlain(writer, upright ? phrase::kJointsMovedUp : phrase::kJointsMovedRight,
                    {{"n", beyond.size()}, {"length", length}});
}

} // namespace

Outcome<Stretch> stretched(const Writer& writer, const Measured& measured, double value) {
    const Truss& truss = writer.truss;
    if (!(value > 0)) {
        return Issue{IssueCode::OutOfRange, "input", phrase::kDimensionPositive};
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
    stretch.edit.name = statement(phrase::kStepDimension, {{"length", lengthText(truss, value)}});
    stretch.says = movedText(writer, beyond, measured.upright, by);
    return stretch;
}

} // namespace gusset
