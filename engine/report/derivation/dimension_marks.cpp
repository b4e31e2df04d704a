#include "report/derivation/dimension_marks.hpp"

#include "report/text/phrases.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kOff = 14;        // px from the drawing to the dimension line
constexpr double kTick = 4;        // px, half a tick
constexpr double kBreak = 2.5;     // px, half the gap between the strokes that break a line
constexpr double kFigureSize = 13; // px, font size of the numbers
constexpr double kFigureAir = 6;   // px left free beside a number in its interval

struct Stop {
    double px = 0;
    double place = 0; // length units
    bool far = false;
};

// The points that a chain of dimensions stops at.
std::vector<Stop> stopsOf(const std::vector<MeasuredPoint>& points, bool level) {
    std::vector<Stop> all;
    std::vector<Stop> stops;
    for (const MeasuredPoint& point : points) {
        const Stop stop = level ? Stop{point.px.x, point.at.x, point.farLevel}
                                : Stop{point.px.y, point.at.y, point.farUpright};
        all.push_back(stop);
        if (level ? point.level : point.upright) {
            stops.push_back(stop);
        }
    }
    const auto before = [](const Stop& a, const Stop& b) { return a.px < b.px; };
    const auto [first, last] = std::minmax_element(all.begin(), all.end(), before);
    stops.push_back(*first);
    stops.push_back(*last);
    std::sort(stops.begin(), stops.end(), before);
    const auto same = [](const Stop& a, const Stop& b) { return b.px - a.px < 0.01; };
    stops.erase(std::unique(stops.begin(), stops.end(), same), stops.end());
    return stops;
}

RichLine figureOf(const Notation& notation, const Stop& a, const Stop& b) {
    return plainLine(givenLength(notation, std::fabs(b.place - a.place)));
}

bool fits(const Notation& notation, const std::vector<Stop>& stops, bool level) {
    for (std::size_t i = 1; i < stops.size(); ++i) {
        const double room = stops[i].px - stops[i - 1].px - kFigureAir;
        const RichLine figure = figureOf(notation, stops[i - 1], stops[i]);
        if (room < (level ? widthOf(figure, kFigureSize) : 1.4 * kFigureSize)) {
            return false;
        }
    }
    return true;
}

// `off`: position of the dimension line in px, down or to the right.
void drawChain(const Notation& notation, std::vector<Stop> stops, bool level, double off,
               Sketch& sketch) {
    if (!fits(notation, stops, level)) {
        stops = {stops.front(), stops.back()};
    }
    if (stops.size() < 2 || !fits(notation, stops, level)) {
        return;
    }
    const auto at = [&](double along, double out) {
        return level ? Vec2{along, off + out} : Vec2{off + out, along};
    };
    const auto line = [&](Vec2 a, Vec2 b) {
        sketch.lines.push_back({a, b, SketchInk::Muted, 0.75, false});
    };
    line(at(stops.front().px, 0), at(stops.back().px, 0));
    const auto breakLine = [&](double middle) { // two short strokes across it
        for (const double side : {-kBreak, kBreak}) {
            line(at(middle + side - kTick, kTick), at(middle + side + kTick, -kTick));
        }
    };
    for (const Stop& stop : stops) {
        line(at(stop.px, -kTick), at(stop.px, kTick));
    }
    for (std::size_t i = 1; i < stops.size(); ++i) {
        const double middle = (stops[i - 1].px + stops[i].px) / 2;
        if (stops[i - 1].far || stops[i].far) {
            breakLine(middle);
        }
        sketch.words.push_back({.words = figureOf(notation, stops[i - 1], stops[i]),
                                .at = at(middle, level ? 13 : 8),
                                .anchor = level ? SketchAnchor::Middle : SketchAnchor::Start,
                                .ink = SketchInk::Muted,
                                .size = kFigureSize});
    }
}

} // namespace

void addDimensions(const Notation& notation, const std::vector<MeasuredPoint>& points,
                   Sketch& sketch) {
    const double right = sketch.width + kOff;
    const double under = sketch.height + kOff;
    drawChain(notation, stopsOf(points, true), true, under, sketch);
    drawChain(notation, stopsOf(points, false), false, right, sketch);
}

} // namespace gusset
