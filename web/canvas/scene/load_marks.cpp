// The loads on the board: arrows and rows of arrows with their figures, and the angles of those
// given by one.
#include "app/fields/load_text.hpp"
#include "canvas/scene/scene_builders.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr double kArcRadius = 20; // px of the arc that shows a load's angle

// Pale if it is not among the loads that the results are for.
Ink inkOf(const Drawing& drawing, const Load& load) {
    const bool acts = caseFactor(drawing.state.truss, drawing.state.choice, load) != 0;
    return acts ? Ink::Load : Ink::Muted;
}

LabelMark labelOf(const Drawing& drawing, LoadId id, Vec2 about) {
    const Load& load = drawing.state.truss.loads[id.at()];
    LabelMark mark{loadFigure({*drawing.state.book, drawing.state.truss}, load), about,
                   inkOf(drawing, load), LabelKind::Load};
    mark.of = id;
    return mark;
}

// Outside each segment of the line, the middle one first; then beyond its ends.
std::vector<Vec2> placesOver(const ChordSymbol& symbol, Vec2 size) {
    constexpr double kAway = 6;
    std::vector<Vec2> places;
    const std::size_t count = symbol.edges.size();
    for (std::size_t i = 0; i < count; ++i) {
        const Arrow& edge = symbol.edges[(count / 2 + i) % count];
        const Vec2 along = edge.head - edge.tail;
        const double slope = std::abs(along.y) / std::max(std::abs(along.x), 1.0);
        const double away = kAway * std::sqrt(1 + slope * slope);
        places.push_back(0.5 * (edge.tail + edge.head) +
                         (away + 0.5 * (size.y + slope * size.x)) * symbol.out);
    }
    const Vec2 first = symbol.edges.front().tail;
    const Vec2 last = symbol.edges.back().head;
    const Vec2 beyond{std::copysign(kAway + 0.5 * size.x, last.x - first.x), 0};
    places.push_back(first - beyond);
    places.push_back(last + beyond);
    return places;
}

void drawChordLoad(Drawing& drawing, const ChordSymbol& symbol) {
    const Ink ink = inkOf(drawing, drawing.state.truss.loads[symbol.load.at()]);
    for (const Arrow& edge : symbol.edges) {
        addLine(drawing, {edge.tail, edge.head, 1.8F, ink, 0});
        drawing.obstacles.addSegment(edge.tail, edge.head, 2);
        growBox(drawing, edge.tail);
        growBox(drawing, edge.head);
    }
    for (const Arrow& arrow : symbol.arrows) {
        addArrow(drawing, arrow, ink, 1.4F);
    }
    LabelMark mark = labelOf(drawing, symbol.load, middleOf(symbol.edges[symbol.edges.size() / 2]));
    const Vec2 size = drawing.measure(mark.text, mark.kind);
    wish(drawing, std::move(mark), placesOver(symbol, size), kLoadWeight);
}

// From the direction to the right to that of the arrow, as its angle is measured.
void drawArc(Drawing& drawing, Vec2 centre, double degrees) {
    constexpr double kStep = 12; // degrees
    const auto at = [&](double angle) {
        const Vec2 way = directionOf(angle);
        return centre + kArcRadius * Vec2{way.x, -way.y};
    };
    const auto add = [&](Vec2 a, Vec2 b, float dash) {
        addLine(drawing, {a, b, 1.2F, Ink::Dimension, dash});
        drawing.obstacles.addSegment(a, b, 1);
    };
    const int steps = std::max(static_cast<int>(std::abs(degrees) / kStep), 1);
    for (int i = 0; i < steps; ++i) {
        add(at(degrees * i / steps), at(degrees * (i + 1) / steps), 0);
    }
    add(centre, centre + Vec2{kArcRadius + 8, 0}, 3);
}

// The angle of a load that was given by one, with its figure beside the arc's middle.
void drawAngle(Drawing& drawing, const LoadSymbol& symbol) {
    const Load& load = drawing.state.truss.loads[symbol.load.at()];
    const double degrees = degreesOf(load).value_or(0);
    if (std::remainder(degrees, 90) == 0) {
        return;
    }
    drawArc(drawing, symbol.arrow.tail, degrees);
    LabelMark mark = labelOf(drawing, symbol.load, symbol.arrow.tail);
    mark.text = directionLook(drawing.state.truss, load);
    const Vec2 size = drawing.measure(mark.text, mark.kind);
    std::vector<Vec2> places;
    for (const double share : {0.5, 0.3, 0.7, 0.1, 0.9}) {
        const Vec2 way = directionOf(share * degrees);
        const double half = 0.5 * (std::abs(way.x) * size.x + std::abs(way.y) * size.y);
        places.push_back(symbol.arrow.tail + (kArcRadius + 5 + half) * Vec2{way.x, -way.y});
    }
    wish(drawing, std::move(mark), std::move(places), kLoadWeight - 0.5);
}

void drawLoad(Drawing& drawing, const LoadSymbol& symbol) {
    const Ink ink = inkOf(drawing, drawing.state.truss.loads[symbol.load.at()]);
    addArrow(drawing, symbol.arrow, ink, 2.4F);
    LabelMark mark = labelOf(drawing, symbol.load, middleOf(symbol.arrow));
    const Vec2 size = drawing.measure(mark.text, mark.kind);
    wish(drawing, std::move(mark), placesBeside(symbol.arrow, symbol.pushes, size), kLoadWeight);
    drawAngle(drawing, symbol);
}

} // namespace

void drawLoads(Drawing& drawing) {
    if (drawing.influence) {
        return;
    }
    for (const ChordSymbol& symbol : drawing.symbols.chords) {
        drawChordLoad(drawing, symbol);
    }
    Thinning thinned = thinning(drawing, drawing.symbols.loads.size());
    for (const LoadSymbol& symbol : drawing.symbols.loads) {
        if (!thinned.leavesOut(symbol.arrow.head)) {
            drawLoad(drawing, symbol);
        }
    }
}

} // namespace gusset
