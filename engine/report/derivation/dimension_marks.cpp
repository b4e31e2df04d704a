#include "report/derivation/dimension_marks.hpp"

#include "core/tolerance.hpp"
#include "report/text/phrases.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kOff = 14;        // px from the drawing to the dimension line
constexpr double kTick = 4;        // px, half a tick
constexpr double kFigureSize = 13; // px, font size of the numbers
constexpr double kFigureAir = 6;   // px left free beside a number in its interval

struct Stop {
    double px = 0;
    double place = 0; // length units
};

// The joints that a chain of dimensions stops at: the outermost, and those with a force that has a
// lever arm in this direction.
std::vector<Stop> stopsOf(const Notation& notation, const FreeBody& body,
                          const std::vector<Vec2>& places, bool level) {
    std::vector<Stop> all;
    std::vector<Stop> stops;
    for (std::size_t i = 0; i < body.joints.size(); ++i) {
        const Vec2 at = notation.truss.joints[body.joints[i].at()].at;
        const Stop stop = level ? Stop{places[i].x, at.x} : Stop{places[i].y, at.y};
        all.push_back(stop);
        const bool turns =
            std::any_of(body.forces.begin(), body.forces.end(), [&](const BodyForce& force) {
                const double across = level ? force.along.y : force.along.x;
                return force.at == body.joints[i] && std::fabs(across) > kParallel;
            });
        if (turns) {
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
    for (const Stop& stop : stops) {
        line(at(stop.px, -kTick), at(stop.px, kTick));
    }
    for (std::size_t i = 1; i < stops.size(); ++i) {
        const double middle = (stops[i - 1].px + stops[i].px) / 2;
        sketch.words.push_back({.words = figureOf(notation, stops[i - 1], stops[i]),
                                .at = at(middle, level ? 13 : 8),
                                .anchor = level ? SketchAnchor::Middle : SketchAnchor::Start,
                                .ink = SketchInk::Muted,
                                .size = kFigureSize});
    }
}

} // namespace

void addDimensions(const Notation& notation, const FreeBody& body, const std::vector<Vec2>& places,
                   Sketch& sketch) {
    const double right = sketch.width + kOff;
    const double under = sketch.height + kOff;
    drawChain(notation, stopsOf(notation, body, places, true), true, under, sketch);
    drawChain(notation, stopsOf(notation, body, places, false), false, right, sketch);
}

} // namespace gusset
