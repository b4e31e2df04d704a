#include "canvas/scene/labels.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

namespace gusset {

namespace {

constexpr double kCell = 48; // CSS px: about the size of a label

Vec2 lower(Vec2 a, Vec2 b) { return {std::min(a.x, b.x), std::min(a.y, b.y)}; }
Vec2 upper(Vec2 a, Vec2 b) { return {std::max(a.x, b.x), std::max(a.y, b.y)}; }

// Obstacles in one cell: a cell holds a label or two, or the lines of about five panels.
constexpr std::size_t kCrowd = 40;

// If more labels than this found no room, the drawing is too small to be read anyway.
constexpr std::size_t kMostPushing = 60;

bool boxesMeet(Vec2 one, Vec2 halfOne, Vec2 other, Vec2 halfOther) {
    return std::abs(one.x - other.x) < halfOne.x + halfOther.x &&
           std::abs(one.y - other.y) < halfOne.y + halfOther.y;
}

} // namespace

Obstacles::Obstacles(const Rect& free)
    : free_(free), columns_(std::max(1, static_cast<int>(std::ceil(free.size.x / kCell)))),
      rows_(std::max(1, static_cast<int>(std::ceil(free.size.y / kCell)))),
      cells_(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_)) {}

// Separating axes of a box and a segment: the sides of the box, and the segment's normal.
bool Obstacles::meets(const Stroke& stroke, Vec2 middle, Vec2 half) {
    const Vec2 from = stroke.a - middle;
    const Vec2 to = stroke.b - middle;
    const Vec2 both = half + stroke.half;
    if (std::min(from.x, to.x) >= both.x || std::max(from.x, to.x) <= -both.x ||
        std::min(from.y, to.y) >= both.y || std::max(from.y, to.y) <= -both.y) {
        return false;
    }
    const Vec2 along = stroke.b - stroke.a;
    const double reach =
        half.x * std::abs(along.y) + half.y * std::abs(along.x) + stroke.radius * length(along);
    return std::abs(cross(along, from)) < reach || (along.x == 0 && along.y == 0);
}

Obstacles::Cells Obstacles::cellsOf(Vec2 low, Vec2 high) const {
    const auto cell = [](double distance, int count) {
        return static_cast<int>(std::clamp(std::floor(distance / kCell), 0.0, count - 1.0));
    };
    return {cell(low.x - free_.at.x, columns_), cell(low.y - free_.at.y, rows_),
            cell(high.x - free_.at.x, columns_), cell(high.y - free_.at.y, rows_)};
}

void Obstacles::add(const Stroke& stroke) {
    const Vec2 low = lower(stroke.a, stroke.b) - stroke.half;
    const Vec2 high = upper(stroke.a, stroke.b) + stroke.half;
    const Vec2 end = free_.at + free_.size;
    if (high.x < free_.at.x || high.y < free_.at.y || low.x > end.x || low.y > end.y) {
        return;
    }
    const auto index = static_cast<std::uint32_t>(strokes_.size());
    strokes_.push_back(stroke);
    const Cells cells = cellsOf(low, high);
    const Vec2 halfCell = {0.5 * kCell, 0.5 * kCell};
    for (int row = cells.top; row <= cells.bottom; ++row) {
        for (int column = cells.left; column <= cells.right; ++column) {
            const Vec2 middle = free_.at + halfCell + kCell * Vec2{1.0 * column, 1.0 * row};
            // Cells at the edge also represent everything beyond them.
            const bool rim = row == 0 || column == 0 || row == rows_ - 1 || column == columns_ - 1;
            if (rim || meets(stroke, middle, halfCell)) {
                cells_[static_cast<std::size_t>(row * columns_ + column)].push_back(index);
            }
        }
    }
}

void Obstacles::addSegment(Vec2 a, Vec2 b, double halfWidth) {
    add({a, b, {halfWidth, halfWidth}, halfWidth});
}

void Obstacles::addBox(Vec2 middle, Vec2 half) { add({middle, middle, half, 0}); }

bool Obstacles::isWithin(Vec2 middle, Vec2 half) const {
    const Vec2 low = middle - half - free_.at;
    const Vec2 high = middle + half - free_.at;
    return low.x >= 0 && low.y >= 0 && high.x <= free_.size.x && high.y <= free_.size.y;
}

bool Obstacles::isClear(Vec2 middle, Vec2 half) const {
    if (!isWithin(middle, half)) {
        return false;
    }
    const Cells cells = cellsOf(middle - half, middle + half);
    for (int row = cells.top; row <= cells.bottom; ++row) {
        for (int column = cells.left; column <= cells.right; ++column) {
            for (const std::uint32_t index :
                 cells_[static_cast<std::size_t>(row * columns_ + column)]) {
                if (meets(strokes_[index], middle, half)) {
                    return false;
                }
            }
        }
    }
    return true;
}

bool Obstacles::isCrowded(Vec2 place) const {
    const Cells cell = cellsOf(place, place);
    return cells_[static_cast<std::size_t>(cell.top * columns_ + cell.left)].size() > kCrowd;
}

namespace {

// The labels while they are being placed.
class Placing {
public:
    Placing(const std::vector<LabelWish>& wishes, const Obstacles& obstacles)
        : wishes_(wishes), obstacles_(obstacles), at_(wishes.size()),
          standing_(obstacles.cellCount()) {}

    [[nodiscard]] const std::optional<Vec2>& at(std::size_t label) const { return at_[label]; }

    bool placeWhereFree(std::size_t label) {
        for (const Vec2 place : wishes_[label].places) {
            if (othersAt(label, place).empty() && obstacles_.isClear(place, halfOf(label))) {
                put(label, place);
                return true;
            }
        }
        return false;
    }

    // Places a label where only one other is, if that one can go elsewhere.
    bool placeByPushing(std::size_t label) {
        for (const Vec2 place : wishes_[label].places) {
            if (!obstacles_.isClear(place, halfOf(label))) {
                continue;
            }
            const std::vector<std::size_t> others = othersAt(label, place);
            if (others.size() == 1 && pushAway(others.front(), label, place)) {
                return true;
            }
        }
        return false;
    }

private:
    [[nodiscard]] Vec2 halfOf(std::size_t label) const {
        return 0.5 * wishes_[label].size + Vec2{kLabelAir, kLabelAir};
    }

    void put(std::size_t label, Vec2 place) {
        at_[label] = place;
        obstacles_.forEachCell(place, halfOf(label),
                               [&](std::size_t cell) { standing_[cell].push_back(label); });
    }
    void take(std::size_t label) {
        obstacles_.forEachCell(*at_[label], halfOf(label),
                               [&](std::size_t cell) { std::erase(standing_[cell], label); });
        at_[label].reset();
    }

    // Between two labels one margin is enough, not one for each.
    [[nodiscard]] std::vector<std::size_t> othersAt(std::size_t label, Vec2 place) const {
        std::vector<std::size_t> others;
        const Vec2 half = 0.5 * wishes_[label].size;
        obstacles_.forEachCell(place, half, [&](std::size_t cell) {
            for (const std::size_t other : standing_[cell]) {
                if (other != label && boxesMeet(*at_[other], halfOf(other), place, half) &&
                    std::find(others.begin(), others.end(), other) == others.end()) {
                    others.push_back(other);
                }
            }
        });
        return others;
    }

    bool pushAway(std::size_t other, std::size_t label, Vec2 place) {
        const Vec2 before = *at_[other];
        take(other);
        put(label, place);
        if (placeWhereFree(other)) {
            return true;
        }
        take(label);
        put(other, before);
        return false;
    }

    const std::vector<LabelWish>& wishes_;
    const Obstacles& obstacles_;
    std::vector<std::optional<Vec2>> at_;
    std::vector<std::vector<std::size_t>> standing_; // the labels in each cell
};

} // namespace

PlacedLabels placeLabels(std::vector<LabelWish> wishes, const Obstacles& obstacles) {
    std::stable_sort(wishes.begin(), wishes.end(),
                     [](const LabelWish& a, const LabelWish& b) { return a.weight > b.weight; });
    for (LabelWish& wish : wishes) {
        if (!wish.places.empty() && obstacles.isCrowded(wish.places.front())) {
            wish.places.clear();
        }
    }
    Placing placing(wishes, obstacles);
    std::vector<std::size_t> left;
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        if (!placing.placeWhereFree(i) && left.size() < kMostPushing) {
            left.push_back(i);
        }
    }
    for (const std::size_t label : left) {
        placing.placeByPushing(label);
    }
    PlacedLabels placed;
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        LabelMark& mark = wishes[i].mark;
        if (placing.at(i)) {
            mark.at = *placing.at(i);
            placed.marks.push_back(std::move(mark));
        } else if (obstacles.isWithin(mark.at, {})) {
            placed.unplaced.push_back(std::move(mark));
        }
    }
    return placed;
}

} // namespace gusset
