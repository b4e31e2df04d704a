#pragma once
// The force polygon drawn to scale, line after line, and the truss with its spaces lettered by
// Bow's notation, so that each can be read from the other.

#include "core/progress.hpp"
#include "hand/polygon/force_polygon.hpp"
#include "report/formula/notation.hpp"
#include "report/sketch/sketch.hpp"
#include "report/sketch/sketch_room.hpp"

#include <memory>
#include <vector>

namespace gusset {

struct PolygonLook {
    int drawn = -1;     // so many of its lines, in their order; −1: all
    int lit = -1;       // this one stands out; −1: none
    double width = 420; // px for the polygon itself; its scale is the largest round one that fits
    double height = 400;
};
struct PolygonDrawing {
    Sketch sketch;
    std::vector<SketchStroke> lines; // px, a line of the polygon each, those that are drawn
    double perCentimetre = 1;        // force units that 1 cm stands for: 1, 2, 2.5 or 5 · 10ⁿ
};

// Preconditions: the polygon is not refused, `drawn` ≤ its number of lines, `lit` < it.
[[nodiscard]] PolygonDrawing polygonDrawing(const Writer&, const ForcePolygon&, const PolygonLook&);
// The line next to a point of the drawing, within `reach` px; −1 when there is none. A line of no
// length can't be touched.
[[nodiscard]] int polygonLineAt(const PolygonDrawing&, Vec2 at, double reach);

// The truss with all forces on it, and the letters in its spaces. Precondition: the working is that
// of the same loads.
[[nodiscard]] Sketch spacesSketch(const Notation&, const ForcePolygon&,
                                  SketchPaper = SketchPaper::Page);
// The same in slices (core/progress); of a refused polygon nothing. What it is given stays where it
// is while the task lives.
class SpacesSketchTask {
public:
    SpacesSketchTask(const Notation&, const ForcePolygon&, SketchPaper = SketchPaper::Page);
    ~SpacesSketchTask();
    SpacesSketchTask(SpacesSketchTask&&) noexcept;
    SpacesSketchTask& operator=(SpacesSketchTask&&) noexcept;

    bool advance();
    [[nodiscard]] Progress progress() const; // words placed
    [[nodiscard]] Sketch take();             // once

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace gusset
