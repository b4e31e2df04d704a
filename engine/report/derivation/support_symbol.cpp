#include "report/derivation/support_symbol.hpp"

#include "report/derivation/body_draft.hpp"

namespace gusset {

SupportReach drawSupport(Sketch& sketch, Vec2 tip, const Support& support, int thing) {
    constexpr double kHeight = 15; // px from the joint to the ground, or to a roller's wheels
    constexpr double kHalf = 10;   // px, half the width of its triangle
    constexpr double kWheel = 3;   // px, radius
    const bool rolls = support.kind == SupportKind::Roller;
    const Vec2 down = rolls ? onPaper(-directionOf(support.reaction)) : Vec2{0, 1};
    const Vec2 side{-down.y, down.x};
    const Vec2 foot = tip + kHeight * down;
    const auto line = [&](Vec2 a, Vec2 b) {
        sketch.lines.push_back({a, b, SketchInk::Plain, 1.25, false, thing});
    };
    line(tip, foot + kHalf * side);
    line(foot + kHalf * side, foot - kHalf * side);
    line(foot - kHalf * side, tip);
    double depth = kHeight;
    if (rolls) {
        for (const double at : {-0.6, 0.6}) {
            sketch.discs.push_back(
                {foot + kWheel * down + at * kHalf * side, kWheel, SketchInk::Plain, false});
        }
        depth += 2 * kWheel + 1;
    }
    const Vec2 ground = tip + depth * down;
    line(ground - 1.6 * kHalf * side, ground + 1.6 * kHalf * side);
    return {down, depth};
}

} // namespace gusset
