#pragma once
// Drawings of the truss for the stage. Private to report/lesson.

#include "report/derivation/body_draft.hpp"
#include "report/lesson/stage.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace gusset {

inline const Sketch& sketchOf(const Sketch& sketch) { return sketch; }
template <class Picture>
const Sketch& sketchOf(const Picture& picture) {
    return picture.sketch;
}

// The largest drawing that fits the space, at the usual size of its letters. Where none does, as
// arrows and letters alone are too high, the largest that need not be scaled down much more than
// the smallest. `draw` makes it from the room of its truss: a Sketch, or
// something that has one.
template <class Draw>
[[nodiscard]] auto largestIn(const FigureSpace& space, Draw draw) {
    constexpr double kSmallestShare = 0.15;
    constexpr double kStep = 0.92;
    constexpr double kNotMuch = 1.25;
    std::vector<decltype(draw(PartRoom{}))> drawings;
    const auto excess = [&](const auto& drawing) {
        const Sketch& sketch = sketchOf(drawing);
        return std::max(sketch.width / space.wide, sketch.height / space.high);
    };
    double least = HUGE_VAL;
    for (double share = 1; share > kSmallestShare && least > 1; share *= kStep) {
        const double wide = share * space.wide;
        drawings.push_back(draw(PartRoom{wide, share * space.high, wide, 0}));
        least = std::min(least, excess(drawings.back()));
    }
    const double most = least > 1 ? kNotMuch * least : 1;
    return *std::find_if(drawings.begin(), drawings.end(),
                         [&](const auto& drawing) { return excess(drawing) <= most; });
}

// A band around a member, under everything.
void light(Sketch&, const SketchLine& member);

} // namespace gusset
