#include "report/sketch/sketch_room.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

namespace gusset {
namespace {

constexpr double kAir = 2;         // px between words and anything else
constexpr double kFar = 26;        // px from where words belong; farther away they get a leader
constexpr double kFarthest = 600;  // px: readers would not look farther away
constexpr double kRing = 5;        // px between the rings that are searched
constexpr double kSquare = 32;     // px, side of a grid square: about the size of words
constexpr int kMostSquares = 4096; // the most that one box or stroke is recorded in

// Cosine and sine of the directions in which a ring is searched: straight ahead first, then to both
// sides.
constexpr double kEighth = 0.70710678118654752;
constexpr double kLong = 0.92387953251128674; // cos 22.5°
constexpr double kShort = 0.38268343236508977;
constexpr std::array<Vec2, 16> kTurns{{{1, 0},
                                       {kLong, kShort},
                                       {kLong, -kShort},
                                       {kEighth, kEighth},
                                       {kEighth, -kEighth},
                                       {kShort, kLong},
                                       {kShort, -kLong},
                                       {0, 1},
                                       {0, -1},
                                       {-kShort, kLong},
                                       {-kShort, -kLong},
                                       {-kEighth, kEighth},
                                       {-kEighth, -kEighth},
                                       {-kLong, kShort},
                                       {-kLong, -kShort},
                                       {-1, 0}}};

Vec2 turned(Vec2 way, Vec2 turn) {
    return {way.x * turn.x - way.y * turn.y, way.x * turn.y + way.y * turn.x};
}

// Distance from the centre of a box to its edge in a direction.
double reachOf(const SketchBox& box, Vec2 way) {
    const Vec2 half = 0.5 * (box.high - box.low);
    const double across = std::fabs(way.x) > 0 ? half.x / std::fabs(way.x) : HUGE_VAL;
    const double along = std::fabs(way.y) > 0 ? half.y / std::fabs(way.y) : HUGE_VAL;
    return std::min(across, along);
}

void take(Sketch& sketch, SketchRoom& room, SketchWords words) {
    room.take(grown(boxOf(words), kAir));
    sketch.words.push_back(std::move(words));
}

int squareAt(double px) { return static_cast<int>(std::floor(px / kSquare)); }

// SplitMix64's last step (G. L. Steele, D. Lea, C. H. Flood, OOPSLA 2014).
std::uint64_t hashOf(int column, int row) {
    std::uint64_t z = static_cast<std::uint64_t>(static_cast<std::uint32_t>(column)) << 32 |
                      static_cast<std::uint32_t>(row);
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
    return z ^ (z >> 31);
}

SketchBox around(const SketchStroke& stroke) {
    return boxAround({stroke.a, stroke.a}, {stroke.b, stroke.b});
}

} // namespace

bool crosses(const SketchBox& box, const SketchStroke& stroke) {
    // Clip the stroke against the four sides (Y.-D. Liang & B. A. Barsky, ACM Trans. Graphics 3
    // (1984)).
    const Vec2 way = stroke.b - stroke.a;
    double from = 0;
    double to = 1;
    const auto clip = [&](double speed, double room) {
        if (speed == 0) {
            return room > 0;
        }
        if (speed < 0) {
            from = std::max(from, room / speed);
        } else {
            to = std::min(to, room / speed);
        }
        return from < to;
    };
    return clip(-way.x, stroke.a.x - box.low.x) && clip(way.x, box.high.x - stroke.a.x) &&
           clip(-way.y, stroke.a.y - box.low.y) && clip(way.y, box.high.y - stroke.a.y);
}

std::optional<SketchRoom::Block> SketchRoom::blockOf(const SketchBox& box) {
    constexpr double kFarOff = 1e6; // squares; the bound keeps their numbers within int
    for (const double side : {box.low.x, box.low.y, box.high.x, box.high.y}) {
        if (!(std::fabs(side) < kFarOff * kSquare)) {
            return std::nullopt;
        }
    }
    const Block block{{squareAt(box.low.x), squareAt(box.low.y)},
                      {squareAt(box.high.x), squareAt(box.high.y)}};
    const std::int64_t columns = std::int64_t{block.high.column} - block.low.column + 1;
    const std::int64_t rows = std::int64_t{block.high.row} - block.low.row + 1;
    return columns * rows <= kMostSquares ? std::optional(block) : std::nullopt;
}

SketchRoom::Block SketchRoom::along(const SketchStroke& stroke, const Block& block, int column) {
    const Vec2 way = stroke.b - stroke.a;
    if (std::fabs(way.x) < 1) { // px: nearly vertical
        return {{column, block.low.row}, {column, block.high.row}};
    }
    const auto heightAt = [&](double x) {
        const double share = std::clamp((x - stroke.a.x) / way.x, 0.0, 1.0);
        return stroke.a.y + share * way.y;
    };
    const double left = heightAt(column * kSquare - 1);
    const double right = heightAt((column + 1) * kSquare + 1);
    return {{column, squareAt(std::min(left, right) - 1)},
            {column, squareAt(std::max(left, right) + 1)}};
}

const SketchRoom::Square* SketchRoom::find(Place place) const {
    const int index = index_.find(hashOf(place.column, place.row), [&](int i) {
        return places_[static_cast<std::size_t>(i)] == place;
    });
    return index < 0 ? nullptr : &squares_[static_cast<std::size_t>(index)];
}

SketchRoom::Square& SketchRoom::at(Place place) {
    const int next = static_cast<int>(squares_.size());
    const int index = index_.insert(hashOf(place.column, place.row), next, [&](int i) {
        return places_[static_cast<std::size_t>(i)] == place;
    });
    if (index >= 0) {
        return squares_[static_cast<std::size_t>(index)];
    }
    places_.push_back(place);
    return squares_.emplace_back();
}

template <class In>
bool SketchRoom::anyOf(const Block& block, In in) const {
    for (int column = block.low.column; column <= block.high.column; ++column) {
        for (int row = block.low.row; row <= block.high.row; ++row) {
            const Square* square = find({column, row});
            if (square && in(*square)) {
                return true;
            }
        }
    }
    return false;
}

void SketchRoom::take(const SketchBox& box) {
    all_.boxes.push_back(box);
    const auto block = blockOf(box);
    if (!block) {
        large_.boxes.push_back(box);
        return;
    }
    for (int column = block->low.column; column <= block->high.column; ++column) {
        for (int row = block->low.row; row <= block->high.row; ++row) {
            at({column, row}).boxes.push_back(box);
        }
    }
}

void SketchRoom::take(const SketchStroke& stroke) {
    all_.strokes.push_back(stroke);
    const auto block = blockOf(around(stroke));
    if (!block) {
        large_.strokes.push_back(stroke);
        return;
    }
    for (int column = block->low.column; column <= block->high.column; ++column) {
        const Block part = along(stroke, *block, column);
        for (int row = part.low.row; row <= part.high.row; ++row) {
            at({column, row}).strokes.push_back(stroke);
        }
    }
}

bool SketchRoom::isFree(const SketchBox& box) const {
    const SketchBox airy = grown(box, kAir);
    const auto taken = [&](const Square& square) {
        return std::any_of(square.boxes.begin(), square.boxes.end(),
                           [&](const SketchBox& other) { return overlap(box, other); }) ||
               std::any_of(square.strokes.begin(), square.strokes.end(),
                           [&](const SketchStroke& stroke) { return crosses(airy, stroke); });
    };
    const bool onPaper = box.low.x >= paper.low.x && box.low.y >= paper.low.y &&
                         box.high.x <= paper.high.x && box.high.y <= paper.high.y;
    const auto block = blockOf(airy);
    return onPaper && !taken(large_) && !(block ? anyOf(*block, taken) : taken(all_));
}

bool SketchRoom::isClear(const SketchStroke& leader) const {
    const auto taken = [&](const Square& square) {
        return std::any_of(square.boxes.begin(), square.boxes.end(), [&](const SketchBox& box) {
            return crosses(grown(box, -kAir), leader);
        });
    };
    const auto block = blockOf(around(leader));
    if (!block) {
        return !taken(all_);
    }
    bool clear = !taken(large_);
    for (int column = block->low.column; clear && column <= block->high.column; ++column) {
        clear = !anyOf(along(leader, *block, column), taken);
    }
    return clear;
}

SketchRoom roomOf(const Sketch& sketch) {
    SketchRoom room;
    for (const SketchLine& line : sketch.lines) {
        room.take(SketchStroke{line.a, line.b});
    }
    for (const SketchArrow& arrow : sketch.arrows) {
        const auto head = headOf(arrow);
        room.take(SketchStroke{arrow.tail, arrow.tip});
        room.take(SketchStroke{head[0], head[1]});
        room.take(SketchStroke{head[1], head[2]});
        room.take(SketchStroke{head[2], head[0]});
    }
    for (const SketchArc& arc : sketch.arcs) { // as chords
        const Vec2 middle = arc.from + arc.to;
        const double size = length(middle);
        const Vec2 top = size > 0 ? (arc.radius / size) * middle : Vec2{};
        room.take(SketchStroke{arc.centre + arc.radius * arc.from, arc.centre + top});
        room.take(SketchStroke{arc.centre + top, arc.centre + arc.radius * arc.to});
    }
    for (const SketchDisc& disc : sketch.discs) {
        room.take(grown({disc.at, disc.at}, disc.radius + 1));
    }
    for (const SketchWords& words : sketch.words) {
        room.take(grown(boxOf(words), kAir));
    }
    return room;
}

bool placeWords(Sketch& sketch, SketchRoom& room, SketchWords words,
                const std::vector<Vec2>& places) {
    for (const Vec2 place : places) {
        words.at = place;
        if (room.isFree(boxOf(words))) {
            take(sketch, room, std::move(words));
            return true;
        }
    }
    return false;
}

bool placeNear(Sketch& sketch, SketchRoom& room, SketchWords words, Vec2 towards, double gap) {
    const Vec2 to = words.at;
    words.anchor = SketchAnchor::Middle;
    std::array<bool, kTurns.size()> blocked{}; // for a leader, and so for all longer ones
    for (double off = gap; off < kFarthest; off += kRing) {
        const bool far = off > gap + kFar;
        for (std::size_t i = 0; i < kTurns.size(); ++i) {
            if (blocked[i]) {
                continue;
            }
            const Vec2 way = turned(towards, kTurns[i]);
            const bool further = far && off - kRing > gap + kFar; // than a leader that was clear
            const double begin = further ? off - kRing : gap;
            blocked[i] = far && !room.isClear({to + (begin - kAir) * way, to + (off - kAir) * way});
            words.at = to + (off + reachOf(boxOf(words), way)) * way;
            if (blocked[i] || !room.isFree(boxOf(words))) {
                continue;
            }
            if (far) {
                const SketchStroke leader{to + (gap - kAir) * way, to + (off - kAir) * way};
                sketch.lines.push_back({leader.a, leader.b, SketchInk::Muted, 0.75, false});
                room.take(leader);
            }
            take(sketch, room, std::move(words));
            return true;
        }
    }
    return false;
}

} // namespace gusset
