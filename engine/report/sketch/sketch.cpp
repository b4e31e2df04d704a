#include "report/sketch/sketch.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace gusset {
namespace {

constexpr double kLineHeight = 1.36;      // of the size: twice the depth of a subscript
constexpr double kStrongerIsWider = 1.08; // semibold relative to regular
constexpr double kHeadLength = 9;         // px, of a shaft 1.5 px wide
constexpr double kHeadHalfWidth = 3.4;

struct Decoded {
    char32_t point = 0;
    std::size_t bytes = 1;
};

// The first character of well-formed UTF-8; anything else is taken byte by byte.
Decoded firstOf(std::string_view text) {
    const auto byte = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u;
    };
    const unsigned lead = byte(0);
    if (lead < 0xC0) {
        return {lead, 1};
    }
    if (lead < 0xE0) {
        return {(lead & 0x1Fu) << 6 | (byte(1) & 0x3Fu), 2};
    }
    if (lead < 0xF0) {
        return {(lead & 0x0Fu) << 12 | (byte(1) & 0x3Fu) << 6 | (byte(2) & 0x3Fu), 3};
    }
    return {0x10000, 4};
}

// Advance in ems, for the widest of the common typefaces (measured in DejaVu Sans, rounded up).
double advanceOf(char32_t point) {
    constexpr std::string_view kNarrow = " !'(),-./:;I[\\]fijlrt|";
    constexpr std::string_view kWide = "%@MWm";
    if (point < 0x80) {
        const char c = static_cast<char>(point);
        if (kNarrow.find(c) != kNarrow.npos) {
            return 0.42;
        }
        if (kWide.find(c) != kWide.npos) {
            return 1.0;
        }
        const bool isCapital = c >= 'A' && c <= 'Z';
        const bool isPlain = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z' && c != 'w');
        return isPlain ? 0.65 : isCapital ? 0.79 : 0.84;
    }
    if (point == 0x2009 || point == 0x202F || point == 0xA0) { // thin and no-break spaces
        return 0.33;
    }
    return point < 0x2E80 ? 0.84 : 1.05; // East Asian characters are as wide as they are high
}

struct UsualAdvance {
    std::string_view letters;
    double ems;
};

// Halfway between Liberation Sans, which has the widths of the usual typeface of most devices, and
// DejaVu Sans.
constexpr std::array<UsualAdvance, 15> kUsualAdvances{{{"0123456789", 0.6},
                                                       {" .,:;/|!'[]", 0.31},
                                                       {"ijlI", 0.26},
                                                       {"()-rft", 0.36},
                                                       {"J", 0.4},
                                                       {"cksvxyz", 0.55},
                                                       {"L", 0.56},
                                                       {"FTZ", 0.6},
                                                       {"ABEKPSVXY", 0.67},
                                                       {"+=<>~", 0.71},
                                                       {"CDHNRU", 0.73},
                                                       {"wGOQ", 0.78},
                                                       {"mM", 0.87},
                                                       {"W%@", 0.97},
                                                       {"abdeghnopqu", 0.6}}};

double usualAdvanceOf(char32_t point) {
    if (point < 0x80) {
        const auto found = std::find_if(
            kUsualAdvances.begin(), kUsualAdvances.end(), [&](const UsualAdvance& each) {
                return each.letters.find(static_cast<char>(point)) != each.letters.npos;
            });
        return found == kUsualAdvances.end() ? 0.6 : found->ems;
    }
    if (point == 0x2009 || point == 0x202F || point == 0xB7) { // thin spaces, the dot of a product
        return point == 0xB7 ? 0.33 : 0.2;
    }
    const bool isSign = point == 0x2212 || point == 0xD7 || point == 0xB1 || point == 0x2248;
    return isSign ? 0.71 : point < 0x2E80 ? 0.62 : 1;
}

// Of words whose letters have these advances, in ems.
template <class Advance>
double widthBy(Advance advance, const RichLine& line, double size) {
    double width = 0;
    for (const Run& run : line) {
        double ems = 0;
        for (std::string_view rest = run.text; !rest.empty();) {
            const Decoded first = firstOf(rest);
            ems += advance(first.point);
            rest.remove_prefix(std::min(first.bytes, rest.size()));
        }
        const double scale = run.style == RunStyle::Subscript ? kSubscriptSize
                             : run.style == RunStyle::Strong  ? kStrongerIsWider
                                                              : 1;
        width += ems * scale * size;
    }
    return width;
}

Vec2 unitAlong(Vec2 from, Vec2 to) {
    const double size = length(to - from);
    return size > 0 ? (1 / size) * (to - from) : Vec2{1, 0};
}

double headLength(const SketchArrow& arrow) {
    return std::min(kHeadLength * std::max(arrow.width, 1.0) / 1.5, length(arrow.tip - arrow.tail));
}

SketchBox boxOfPoints(const std::vector<Vec2>& points) {
    SketchBox box{points.front(), points.front()};
    for (const Vec2 point : points) {
        box = boxAround(box, {point, point});
    }
    return box;
}

SketchBox boxOfAll(const Sketch& sketch) {
    std::vector<SketchBox> boxes;
    for (const SketchArea& area : sketch.areas) {
        boxes.push_back(boxOfPoints(area.corners));
    }
    for (const SketchLine& line : sketch.lines) {
        boxes.push_back(boxOfPoints({line.a, line.b}));
    }
    for (const SketchArrow& arrow : sketch.arrows) {
        const auto head = headOf(arrow);
        boxes.push_back(boxOfPoints({arrow.tail, head[0], head[1], head[2]}));
    }
    for (const SketchArc& arc : sketch.arcs) {
        boxes.push_back(grown({arc.centre, arc.centre}, arc.radius));
    }
    for (const SketchDisc& disc : sketch.discs) {
        boxes.push_back(grown({disc.at, disc.at}, disc.radius));
    }
    for (const SketchWords& words : sketch.words) {
        boxes.push_back(boxOf(words));
    }
    SketchBox all = boxes.empty() ? SketchBox{} : boxes.front();
    for (const SketchBox& box : boxes) {
        all = boxAround(all, box);
    }
    return all;
}

} // namespace

bool overlap(const SketchBox& a, const SketchBox& b) {
    return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

SketchBox boxAround(const SketchBox& a, const SketchBox& b) {
    return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)},
            {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}

SketchBox grown(const SketchBox& box, double by) {
    return {box.low - Vec2{by, by}, box.high + Vec2{by, by}};
}

double widthOf(const RichLine& line, double size) { return widthBy(advanceOf, line, size); }

double usualWidthOf(const RichLine& line, double size) {
    return widthBy(usualAdvanceOf, line, size);
}

SketchBox boxOf(const SketchWords& words) {
    const double width = words.length > 0 ? words.length : widthOf(words.words, words.size);
    const double left = words.anchor == SketchAnchor::Start    ? words.at.x
                        : words.anchor == SketchAnchor::Middle ? words.at.x - width / 2
                                                               : words.at.x - width;
    const double half = words.size * kLineHeight / 2;
    return {{left, words.at.y - half}, {left + width, words.at.y + half}};
}

std::array<Vec2, 3> headOf(const SketchArrow& arrow) {
    const double size = headLength(arrow);
    const Vec2 along = unitAlong(arrow.tail, arrow.tip);
    const Vec2 base = arrow.tip - size * along;
    const Vec2 side = size * (kHeadHalfWidth / kHeadLength) * Vec2{-along.y, along.x};
    return {arrow.tip, base + side, base - side};
}

Vec2 shaftEnd(const SketchArrow& arrow) {
    return arrow.tip - headLength(arrow) * unitAlong(arrow.tail, arrow.tip);
}

void moveSketch(Sketch& sketch, Vec2 by) {
    for (SketchArea& area : sketch.areas) {
        for (Vec2& corner : area.corners) {
            corner = corner + by;
        }
    }
    for (SketchLine& line : sketch.lines) {
        line.a = line.a + by;
        line.b = line.b + by;
    }
    for (SketchArrow& arrow : sketch.arrows) {
        arrow.tail = arrow.tail + by;
        arrow.tip = arrow.tip + by;
    }
    for (SketchArc& arc : sketch.arcs) {
        arc.centre = arc.centre + by;
    }
    for (SketchDisc& disc : sketch.discs) {
        disc.at = disc.at + by;
    }
    for (SketchWords& words : sketch.words) {
        words.at = words.at + by;
    }
}

Vec2 fitSketch(Sketch& sketch, double margin) {
    const SketchBox all = grown(boxOfAll(sketch), margin);
    moveSketch(sketch, -all.low);
    sketch.width = all.high.x - all.low.x;
    sketch.height = all.high.y - all.low.y;
    return -all.low;
}

void addSketch(Sketch& sketch, const Sketch& more) {
    const auto add = [](auto& to, const auto& from) {
        to.insert(to.end(), from.begin(), from.end());
    };
    add(sketch.areas, more.areas);
    add(sketch.lines, more.lines);
    add(sketch.arrows, more.arrows);
    add(sketch.arcs, more.arcs);
    add(sketch.discs, more.discs);
    add(sketch.words, more.words);
}

void holdRoom(Sketch& sketch, Vec2 at) { sketch.areas.push_back({{at, at, at}}); }

Sketch sideBySide(Sketch left, const Sketch& right, double gap) {
    Sketch moved = right;
    moveSketch(moved, {left.width + gap, 0});
    addSketch(left, moved);
    left.width += gap + right.width;
    left.height = std::max(left.height, right.height);
    left.says += " " + right.says;
    return left;
}

} // namespace gusset
