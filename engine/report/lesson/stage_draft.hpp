#pragma once
// Drawings of the truss for the stage. Private to report/lesson.

#include "report/derivation/body_draft.hpp"
#include "report/lesson/stage.hpp"

#include <algorithm>

namespace gusset {

// The largest drawing that fits the space, at the usual size of its letters; the smallest if none
// does. `draw` makes it from the room of its truss.
template <class Draw>
[[nodiscard]] Sketch largestIn(const FigureSpace& space, Draw draw) {
    constexpr double kSmallestShare = 0.15;
    constexpr double kStep = 0.92;
    Sketch sketch;
    for (double share = 1; share > kSmallestShare; share *= kStep) {
        const double wide = share * space.wide;
        sketch = draw(PartRoom{wide, share * space.high, wide, 0});
        if (sketch.width <= space.wide && sketch.height <= space.high) {
            break;
        }
    }
    return sketch;
}

// A band around a member, under everything.
void light(Sketch&, const SketchLine& member);

} // namespace gusset
