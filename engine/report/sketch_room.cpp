#include "report/sketch_room.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {
namespace {

constexpr double kAir = 2;        // px between words and anything else
constexpr double kFar = 26;       // px from where words belong: beyond, a line leads to them
constexpr double kFarthest = 600; // px: farther off nobody would look
constexpr double kRing = 5;       // px between the rings that are searched

// Cosine and sine of the turns at which a ring is searched: straight on first, then to both sides.
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

// From the middle of a box to its edge in a direction.
double reachOf(const SketchBox& box, Vec2 way) {
    const Vec2 half = 0.5 * (box.high - box.low);
    const double across = std::fabs(way.x) > 0 ? half.x / std::fabs(way.x) : HUGE_VAL;
    const double along = std::fabs(way.y) > 0 ? half.y / std::fabs(way.y) : HUGE_VAL;
    return std::min(across, along);
}

void take(Sketch& sketch, SketchRoom& room, SketchWords words) {
    room.boxes.push_back(grown(boxOf(words), kAir));
    sketch.words.push_back(std::move(words));
}

// A leader may cross lines, but no words.
bool isClear(const SketchRoom& room, const SketchStroke& leader) {
    return std::none_of(room.boxes.begin(), room.boxes.end(),
                        [&](const SketchBox& box) { return crosses(grown(box, -kAir), leader); });
}

} // namespace

bool crosses(const SketchBox& box, const SketchStroke& stroke) {
    // Clip the stroke by the four sides (Y.-D. Liang & B. A. Barsky, ACM Trans. Graphics 3 (1984)).
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

bool isFree(const SketchRoom& room, const SketchBox& box) {
    const bool onPaper = box.low.x >= room.paper.low.x && box.low.y >= room.paper.low.y &&
                         box.high.x <= room.paper.high.x && box.high.y <= room.paper.high.y;
    return onPaper &&
           std::none_of(room.boxes.begin(), room.boxes.end(),
                        [&](const SketchBox& other) { return overlap(box, other); }) &&
           std::none_of(room.strokes.begin(), room.strokes.end(), [&](const SketchStroke& stroke) {
               return crosses(grown(box, kAir), stroke);
           });
}

SketchRoom roomOf(const Sketch& sketch) {
    SketchRoom room;
    for (const SketchLine& line : sketch.lines) {
        room.strokes.push_back({line.a, line.b});
    }
    for (const SketchArrow& arrow : sketch.arrows) {
        const auto head = headOf(arrow);
        room.strokes.push_back({arrow.tail, arrow.tip});
        room.strokes.push_back({head[0], head[1]});
        room.strokes.push_back({head[1], head[2]});
        room.strokes.push_back({head[2], head[0]});
    }
    for (const SketchArc& arc : sketch.arcs) { // its chords
        const Vec2 middle = arc.from + arc.to;
        const double size = length(middle);
        const Vec2 top = size > 0 ? (arc.radius / size) * middle : Vec2{};
        room.strokes.push_back({arc.centre + arc.radius * arc.from, arc.centre + top});
        room.strokes.push_back({arc.centre + top, arc.centre + arc.radius * arc.to});
    }
    for (const SketchDisc& disc : sketch.discs) {
        room.boxes.push_back(grown({disc.at, disc.at}, disc.radius + 1));
    }
    for (const SketchWords& words : sketch.words) {
        room.boxes.push_back(grown(boxOf(words), kAir));
    }
    return room;
}

bool placeWords(Sketch& sketch, SketchRoom& room, SketchWords words,
                const std::vector<Vec2>& places) {
    for (const Vec2 place : places) {
        words.at = place;
        if (isFree(room, boxOf(words))) {
            take(sketch, room, std::move(words));
            return true;
        }
    }
    return false;
}

bool placeNear(Sketch& sketch, SketchRoom& room, SketchWords words, Vec2 towards, double gap) {
    const Vec2 to = words.at;
    words.anchor = SketchAnchor::Middle;
    for (double off = gap; off < kFarthest; off += kRing) {
        for (const Vec2 turn : kTurns) {
            const Vec2 way = turned(towards, turn);
            words.at = to + (off + reachOf(boxOf(words), way)) * way;
            const SketchStroke leader{to + (gap - kAir) * way, to + (off - kAir) * way};
            const bool far = off > gap + kFar;
            if (isFree(room, boxOf(words)) && (!far || isClear(room, leader))) {
                if (far) {
                    sketch.lines.push_back({leader.a, leader.b, SketchInk::Muted, 0.75, false});
                    room.strokes.push_back(leader);
                }
                take(sketch, room, std::move(words));
                return true;
            }
        }
    }
    return false;
}

} // namespace gusset
