#pragma once
// Words on the drawing, placed so that they cover nothing and one another least of all. Each comes
// with the places it would take, best first. Method: greedy by importance, then one round in which
// a label that found no room may push one other to another of that one's places; what still has no
// room is left out. The same wishes always give the same drawing.

#include "app/state/layout.hpp"
#include "canvas/scene/scene.hpp"

#include <cstdint>
#include <vector>

namespace gusset {

struct LabelWish {
    LabelMark mark;           // its `at` is set by the placing
    Vec2 size;                // CSS px
    std::vector<Vec2> places; // of its middle, best first
    double weight = 0;        // the greater is placed first
};

// What labels keep clear of: segments, discs as squares, and boxes, all in CSS px within `free`.
class Obstacles {
public:
    explicit Obstacles(const Rect& free);

    void addSegment(Vec2 a, Vec2 b, double halfWidth);
    void addDisc(Vec2 at, double radius) { addSegment(at, at, radius); }
    void addBox(Vec2 middle, Vec2 half);

    [[nodiscard]] const Rect& free() const { return free_; }
    [[nodiscard]] bool isClear(Vec2 middle, Vec2 half) const; // of these, and within `free`
    // So many lines about this place that looking for room among them is time wasted.
    [[nodiscard]] bool isCrowded(Vec2) const;

    // For those who keep lists of their own: the cells of a grid over `free` that a box touches.
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
    struct Stroke { // a segment with round ends, or a box when its ends are one point
        Vec2 a;
        Vec2 b;
        Vec2 half;         // added on every side of its own box
        double radius = 0; // beside its line
    };
    struct Cells { // both ends included
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

// CSS px of paper kept free around a label.
inline constexpr double kLabelAir = 2;

[[nodiscard]] std::vector<LabelMark> placeLabels(std::vector<LabelWish>, const Obstacles&);

} // namespace gusset
