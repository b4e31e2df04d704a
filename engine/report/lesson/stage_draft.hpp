#pragma once
// Drawings of the truss for the stage. Private to report/lesson.

#include "report/derivation/body_draft.hpp"
#include "report/lesson/stage.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
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
    constexpr int kSizes = 23; // the smallest is 0.16 of the largest
    constexpr double kStep = 0.92;
    constexpr double kNotMuch = 1.25;
    std::vector<std::optional<decltype(draw(PartRoom{}))>> drawings(kSizes);
    const auto drawingOf = [&](int size) -> const auto& {
        std::optional<decltype(draw(PartRoom{}))>& drawing = drawings[std::size_t(size)];
        if (!drawing) {
            const double wide = std::pow(kStep, size) * space.wide;
            drawing = draw(PartRoom{wide, std::pow(kStep, size) * space.high, wide, 0});
        }
        return *drawing;
    };
    const auto excess = [&](int size) {
        const Sketch& sketch = sketchOf(drawingOf(size));
        return std::max(sketch.width / space.wide, sketch.height / space.high);
    };
    // A smaller truss makes a smaller drawing: found by halving, as each takes its time.
    const auto firstWithin = [&](double most) {
        int first = 0;
        for (int end = kSizes; first < end;) {
            const int middle = (first + end) / 2;
            if (excess(middle) <= most) {
                end = middle;
            } else {
                first = middle + 1;
            }
        }
        return first;
    };
    int size = firstWithin(1);
    if (size == kSizes) {
        size = std::min(firstWithin(kNotMuch * excess(kSizes - 1)), kSizes - 1);
    }
    return drawingOf(size);
}

// A band around a member, under everything.
void light(Sketch&, const SketchLine& member);

} // namespace gusset
