#pragma once
// Where words may stand in a sketch: clear of what is drawn and of each other. Whoever draws notes
// what it takes; words then look for the nearest free place.

#include "report/sketch.hpp"

#include <cmath>
#include <vector>

namespace gusset {

struct SketchStroke {
    Vec2 a;
    Vec2 b;
};
struct SketchRoom {
    SketchBox paper{{-HUGE_VAL, -HUGE_VAL}, {HUGE_VAL, HUGE_VAL}}; // words stay on it
    std::vector<SketchBox> boxes;                                  // words and discs
    std::vector<SketchStroke> strokes;
};

[[nodiscard]] bool crosses(const SketchBox&, const SketchStroke&); // touches the inside
[[nodiscard]] bool isFree(const SketchRoom&, const SketchBox&);
// Of all that the sketch holds so far, but its areas: words may stand on a wash.
[[nodiscard]] SketchRoom roomOf(const Sketch&);

// Adds the words at the first of these places that is free, and takes it; false when none is.
bool placeWords(Sketch&, SketchRoom&, SketchWords, const std::vector<Vec2>& places);
// Adds the words as near to `to` as there is room, in direction `towards` (a unit vector) if it can
// be; far off a thin line leads there. False, and no words, when there is no room. `gap`: px
// between `to` and the nearest edge of the words.
bool placeNear(Sketch&, SketchRoom&, SketchWords, Vec2 towards, double gap);

} // namespace gusset
