#pragma once
// Words on the drawing, placed to avoid covering it and, above all, each other. Each label comes
// with its possible places, best first. Method: greedy by importance, then one pass in which a
// label that found no room may push one other label to another of that one's places; what still has
// no room is left out. The same requests always give the same drawing.

#include "app/state/layout.hpp"
#include "canvas/scene/scene.hpp"

#include <cstdint>
#include <vector>

namespace gusset {

struct LabelWish {
    LabelMark mark;           // `at`: the middle of what it belongs to, until it is placed
    Vec2 size;                // CSS px
    std::vector<Vec2> places; // of its centre, best first
    double weight = 0;        // heavier labels are placed first
};

// What labels avoid: segments, discs as squares, and boxes, all in CSS px within `free`.
class Obstacles {
public:
    explicit Obstacles(const Rect& free);

    void addSegment(Vec2 a, Vec2 b, double halfWidth);
    void addDisc(Vec2 at, double radius) { addSegment(at, at, radius); }
    void addBox(Vec2 middle, Vec2 half);

    [[nodiscard]] const Rect& free() const { return free_; }
    [[nodiscard]] bool isClear(Vec2 middle, Vec2 half) const;  // of obstacles, and within `free`
    [[nodiscard]] bool isWithin(Vec2 middle, Vec2 half) const; // `free`
    // So many lines near this place that it is not worth looking for room.
    [[nodiscard]] bool isCrowded(Vec2) const;

    // For callers with lists of their own: visits the cells of a grid over `free` that a box
    // touches.
    template <class Visit>
    void forEachCell(Vec2 middle, Vec2 half, const Visit& visit) const {
        const Cells cells = cellsOf(middle - half, middle + half);
        for (int row = cells.top; row <= cells.bottom; ++row) {
            for (int column = cells.left; column <= cells.right; ++column) {
                visit(static_cast<std::size_t>(row * columns_ + column));
            }
        }
    }
    [[nodiscard]] std::size_t cellCount() const { return cells_.size(); }

private:
    struct Stroke { // a segment with round ends, or a box if its ends coincide
        Vec2 a;
        Vec2 b;
        Vec2 half;         // added on all sides of its bounding box
        double radius = 0; // either side of its line
    };
    struct Cells { // inclusive
        int left, top, right, bottom;
    };
    [[nodiscard]] Cells cellsOf(Vec2 low, Vec2 high) const;
    [[nodiscard]] static bool meets(const Stroke&, Vec2 middle, Vec2 half);
    void add(const Stroke&);

    Rect free_;
    int columns_ = 1;
    int rows_ = 1;
    std::vector<Stroke> strokes_;
    std::vector<std::vector<std::uint32_t>> cells_; // indices of strokes
};

// CSS px of clear paper around a label.
inline constexpr double kLabelAir = 2;

struct PlacedLabels {
    std::vector<LabelMark> marks;
    std::vector<LabelMark> unplaced; // only of what lies within `free`
};
[[nodiscard]] PlacedLabels placeLabels(std::vector<LabelWish>, const Obstacles&);

} // namespace gusset
