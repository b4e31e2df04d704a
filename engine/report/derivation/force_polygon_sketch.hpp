#pragma once
// The force polygon drawn to scale, line after line, and the truss with its spaces lettered by
// Bow's notation, so that each can be read from the other.

#include "core/progress.hpp"
#include "hand/polygon/force_polygon.hpp"
#include "report/formula/notation.hpp"
#include "report/sketch/sketch.hpp"
#include "report/sketch/sketch_room.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace gusset {

struct PolygonLook {
    std::optional<std::size_t> drawn{}; // how many of its lines are drawn, in order; none: all
    std::optional<std::size_t> lit{};   // the highlighted line
    bool holdsRoom = false; // of the lines that are not drawn yet, so that the others stay in place
    double width = 420;     // px for the polygon itself, drawn to the largest round scale that fits
    double height = 400;
};
struct PolygonDrawing {
    Sketch sketch;
    std::vector<SketchStroke> lines; // px, one for each line of the polygon that is drawn
    double perCentimetre = 1;        // force units per 1 cm: 1, 2, 2.5 or 5 · 10ⁿ
};

// Preconditions: the polygon is not refused, `drawn` ≤ its number of lines, `lit` < it.
[[nodiscard]] PolygonDrawing polygonDrawing(const Writer&, const ForcePolygon&, const PolygonLook&);
// The line nearest to a point of the drawing, within `reach` px. A line of zero length is never
// returned.
[[nodiscard]] std::optional<std::size_t> polygonLineAt(const PolygonDrawing&, Vec2 at,
                                                       double reach);

// The truss with all forces on it, and the letters in its spaces. Precondition: the working is that
// of the same loads.
[[nodiscard]] Sketch spacesSketch(const Notation&, const ForcePolygon&,
                                  SketchPaper = SketchPaper::Page);
// The same in slices (core/progress); nothing for a refused polygon. The arguments must outlive the
// task and must not move.
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
