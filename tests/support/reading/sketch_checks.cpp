#include "support/reading/sketch_checks.hpp"

#include "report/text/rich_text.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace gusset::support {

namespace {

// By sampling many points of the segment, unlike the engine, which clips.
bool runsThrough(const SketchBox& box, Vec2 a, Vec2 b) {
    const int steps = 1 + static_cast<int>(4 * length(b - a));
    for (int i = 0; i <= steps; ++i) {
        const Vec2 at = a + (static_cast<double>(i) / steps) * (b - a);
        if (at.x > box.low.x && at.x < box.high.x && at.y > box.low.y && at.y < box.high.y) {
            return true;
        }
    }
    return false;
}

struct Drawn {
    Vec2 a;
    Vec2 b;
    std::string what;
};

std::vector<Drawn> strokesOf(const Sketch& sketch) {
    std::vector<Drawn> strokes;
    for (const SketchLine& line : sketch.lines) {
        strokes.push_back({line.a, line.b, "a line"});
    }
    for (const SketchArrow& arrow : sketch.arrows) {
        const auto head = headOf(arrow);
        strokes.push_back({arrow.tail, arrow.tip, "an arrow"});
        strokes.push_back({head[1], head[2], "the head of an arrow"});
    }
    for (const SketchDisc& disc : sketch.discs) {
        strokes.push_back({disc.at, disc.at, "a disc"});
    }
    return strokes;
}

bool inside(const Sketch& sketch, const SketchBox& box) {
    constexpr double kRounding = 1e-6;
    return box.low.x >= -kRounding && box.low.y >= -kRounding &&
           box.high.x <= sketch.width + kRounding && box.high.y <= sketch.height + kRounding;
}

} // namespace

std::string faultOfSketch(const Sketch& sketch) {
    const std::vector<Drawn> strokes = strokesOf(sketch);
    for (const Drawn& stroke : strokes) {
        const bool finite = isFinite(stroke.a) && isFinite(stroke.b);
        if (!finite || !inside(sketch, {stroke.a, stroke.a}) ||
            !inside(sketch, {stroke.b, stroke.b})) {
            return stroke.what + " leaves the sketch";
        }
    }
    for (std::size_t i = 0; i < sketch.words.size(); ++i) {
        const SketchBox box = boxOf(sketch.words[i]);
        const std::string name = "\"" + plainText(sketch.words[i].words) + "\"";
        if (!inside(sketch, box)) {
            return name + " leaves the sketch";
        }
        for (std::size_t k = 0; k < i; ++k) {
            if (overlap(box, boxOf(sketch.words[k]))) {
                return name + " lies on \"" + plainText(sketch.words[k].words) + "\"";
            }
        }
        for (const Drawn& stroke : strokes) {
            if (runsThrough(box, stroke.a, stroke.b)) {
                return stroke.what + " runs through " + name;
            }
        }
    }
    return {};
}

} // namespace gusset::support
