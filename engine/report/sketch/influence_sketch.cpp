#include "report/sketch/influence_sketch.hpp"

#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "report/results/influence_text.hpp"
#include "report/sketch/sketch_room.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kPlotMargin = 30; // px left and right of the path
constexpr double kTop = 26;        // px above the highest ordinate, for its value
constexpr double kFoot = 24;       // px below the lowest, for its value
constexpr double kLabelRow = 24;   // px for the row of joint labels
constexpr double kTallest = 180;   // px from the lowest ordinate to the highest
constexpr double kWordGap = 12;    // px from a point to the middle of its value
constexpr double kJointSize = 14;  // px
constexpr double kValueSize = 13;
constexpr double kSignSize = 20;

// From metres and ordinates to px.
struct Plot {
    double left = kPlotMargin;
    double scale = 1;      // px per m
    double whole = 0;      // m
    bool mirrored = false; // the path runs to the left on the board
    double axis = 0;       // px from the top to the axis
    double tall = 1;       // px per unit of ordinate

    [[nodiscard]] double x(double at) const { return left + scale * (mirrored ? whole - at : at); }
    [[nodiscard]] Vec2 point(double at, double ordinate) const {
        return {x(at), axis - tall * ordinate};
    }
};

Plot plotOf(const Truss& truss, const InfluenceReport& report, const InfluenceLook& look) {
    const std::vector<double>& values = report.line.ordinates;
    const double high = std::max(0.0, *std::max_element(values.begin(), values.end()));
    const double low = std::min(0.0, *std::min_element(values.begin(), values.end()));
    Plot plot;
    plot.whole = report.line.at.back();
    plot.mirrored =
        truss.joints[report.path.back().at()].at.x < truss.joints[report.path.front().at()].at.x;
    const double room = std::max(look.width, kNarrowestPlot) - 2 * kPlotMargin;
    plot.scale = room / (plot.whole > 0 ? plot.whole : 1);
    const double height = std::min(kTallest, 0.4 * room);
    plot.tall = high > low ? height / (high - low) : 1;
    plot.axis = kTop + plot.tall * high;
    return plot;
}

SketchInk inkOf(double ordinate) {
    return ordinate > 0 ? SketchInk::Tension : SketchInk::Compression;
}

// One interval of constant sign, between two positions on the path.
void addStretch(Sketch& sketch, const Plot& plot, Vec2 from, Vec2 to) {
    const SketchInk ink = inkOf(from.y + to.y);
    if (from.y + to.y == 0) {
        return;
    }
    SketchArea area{{plot.point(from.x, 0), plot.point(from.x, from.y), plot.point(to.x, to.y),
                     plot.point(to.x, 0)},
                    ink};
    // A triangle has three corners: a canvas might drop an area with two that coincide.
    if (to.y == 0) {
        area.corners.pop_back();
    }
    if (from.y == 0) {
        area.corners.erase(area.corners.begin());
    }
    sketch.areas.push_back(std::move(area));
    sketch.lines.push_back({plot.point(from.x, from.y), plot.point(to.x, to.y), ink, 2, false});
}

// The points of the line, including zero crossings between two joints.
std::vector<Vec2> corners(const InfluenceLine& line) {
    std::vector<Vec2> places;
    for (std::size_t i = 0; i < line.at.size(); ++i) {
        if (i > 0 && line.ordinates[i - 1] * line.ordinates[i] < 0) {
            const double share =
                line.ordinates[i - 1] / (line.ordinates[i - 1] - line.ordinates[i]);
            places.push_back({line.at[i - 1] + share * (line.at[i] - line.at[i - 1]), 0});
        }
        places.push_back({line.at[i], line.ordinates[i]});
    }
    return places;
}

// Ordinates that are zero to working accuracy, under a unit load, are drawn on the axis.
InfluenceLine cleaned(InfluenceLine line, EffectKind kind) {
    double scale = kind == EffectKind::Displacement ? 0 : 1;
    for (const double ordinate : line.ordinates) {
        scale = std::max(scale, std::fabs(ordinate));
    }
    for (double& ordinate : line.ordinates) {
        ordinate = std::fabs(ordinate) <= kZeroForce * scale ? 0 : ordinate;
    }
    return line;
}

void addLine(Sketch& sketch, const Plot& plot, const InfluenceLine& line) {
    const std::vector<Vec2> places = corners(line);
    for (std::size_t i = 1; i < places.size(); ++i) {
        addStretch(sketch, plot, places[i - 1], places[i]);
    }
    for (std::size_t i = 0; i < line.at.size(); ++i) {
        if (line.ordinates[i] != 0) {
            sketch.lines.push_back({plot.point(line.at[i], 0),
                                    plot.point(line.at[i], line.ordinates[i]), SketchInk::Muted, 1,
                                    false});
        }
        sketch.discs.push_back({plot.point(line.at[i], 0), 2.5, SketchInk::Plain, true});
    }
    sketch.lines.push_back(
        {plot.point(0, 0), plot.point(plot.whole, 0), SketchInk::Plain, 1.5, false});
}

// Ends first, then the largest ordinates: values that find no room appear in the table only.
std::vector<std::size_t> byImportance(const InfluenceLine& line) {
    std::vector<std::size_t> order(line.at.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        order[i] = i;
    }
    const auto weight = [&](std::size_t i) {
        const bool end = i == 0 || i + 1 == order.size();
        return end ? HUGE_VAL : std::fabs(line.ordinates[i]);
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return weight(a) > weight(b); });
    return order;
}

void addLabels(Sketch& sketch, SketchRoom& room, const Truss& truss, const InfluenceReport& report,
               const Plot& plot) {
    const double row = sketch.height - kLabelRow / 2;
    for (const std::size_t i : byImportance(report.line)) {
        const Vec2 at{plot.x(report.line.at[i]), row};
        placeWords(sketch, room,
                   {.words = {{truss.joints[report.path[i].at()].label, RunStyle::Strong}},
                    .at = at,
                    .size = kJointSize},
                   {at});
    }
}

void addValues(Sketch& sketch, SketchRoom& room, const Truss& truss, const InfluenceReport& report,
               const Plot& plot) {
    for (const std::size_t i : byImportance(report.line)) {
        const double ordinate = report.line.ordinates[i];
        if (ordinate == 0) {
            continue;
        }
        const SketchWords words{.words = {{ordinateText(truss, report, i), RunStyle::Plain}},
                                .ink = inkOf(ordinate),
                                .size = kValueSize};
        const double half = widthOf(words.words, words.size) / 2 + 5;
        const Vec2 out =
            plot.point(report.line.at[i], ordinate) + Vec2{0, ordinate > 0 ? -kWordGap : kWordGap};
        placeWords(sketch, room, words, {out, out + Vec2{half, 0}, out - Vec2{half, 0}});
    }
}

// A sign in each area that is large enough for it, beside its largest ordinate.
void addSigns(Sketch& sketch, SketchRoom& room, const InfluenceLine& line, const Plot& plot) {
    for (const std::size_t i : byImportance(line)) {
        const double ordinate = line.ordinates[i];
        const auto taller = [&](std::size_t other) {
            return line.ordinates[other] * ordinate > 0 &&
                   std::fabs(line.ordinates[other]) > std::fabs(ordinate);
        };
        const bool peak = ordinate != 0 && !(i > 0 && taller(i - 1)) &&
                          !(i + 1 < line.at.size() && taller(i + 1));
        if (!peak || plot.tall * std::fabs(ordinate) < 2 * kSignSize) {
            continue;
        }
        const Vec2 middle = plot.point(line.at[i], ordinate / 2);
        const SketchWords sign{.words = {{ordinate > 0 ? "+" : kMinus, RunStyle::Plain}},
                               .ink = inkOf(ordinate),
                               .size = kSignSize};
        placeWords(sketch, room, sign, {middle + Vec2{14, 0}, middle - Vec2{14, 0}});
    }
}

void addMark(Sketch& sketch, SketchRoom& room, const Truss& truss, const InfluenceReport& report,
             const Plot& plot, double mark) {
    const double at = std::clamp(mark, 0.0, plot.whole);
    const double ordinate = ordinateAt(report.line, at);
    const Vec2 point = plot.point(at, ordinate);
    sketch.lines.push_back({plot.point(at, 0), point, SketchInk::Accent, 2, false});
    sketch.discs.push_back({point, 4.5, SketchInk::Accent, false});
    room.take(SketchStroke{plot.point(at, 0), point});
    room.take(grown({point, point}, 5));
    placeNear(sketch, room,
              {.words = {{signedOrdinate(truss, report, ordinate), RunStyle::Strong}},
               .at = point,
               .ink = SketchInk::Accent,
               .size = kValueSize},
              {0, ordinate < 0 ? 1.0 : -1.0}, 7);
}

} // namespace

double readOffAt(const Truss& truss, const InfluenceReport& report, const InfluenceLook& look,
                 double x) {
    const Plot plot = plotOf(truss, report, look);
    const double at = (x - plot.left) / plot.scale;
    return std::clamp(plot.mirrored ? plot.whole - at : at, 0.0, plot.whole);
}

Sketch influenceSketch(const Writer& writer, const InfluenceReport& given,
                       const InfluenceLook& look) {
    InfluenceReport report = given;
    report.line = cleaned(given.line, given.effect.kind);
    const Plot plot = plotOf(writer.truss, report, look);
    const std::vector<double>& values = report.line.ordinates;
    const double low = std::min(0.0, *std::min_element(values.begin(), values.end()));
    Sketch sketch;
    sketch.says = influenceSentence(writer, report);
    sketch.width = std::max(look.width, kNarrowestPlot);
    sketch.height = plot.axis - plot.tall * low + kFoot + kLabelRow;
    addLine(sketch, plot, report.line);
    SketchRoom room = roomOf(sketch);
    room.paper = {{0, 0}, {sketch.width, sketch.height}};
    addLabels(sketch, room, writer.truss, report, plot); // first, as each has only one place
    if (look.mark) {
        addMark(sketch, room, writer.truss, report, plot, *look.mark);
    }
    addValues(sketch, room, writer.truss, report, plot);
    addSigns(sketch, room, report.line, plot);
    return sketch;
}

} // namespace gusset
