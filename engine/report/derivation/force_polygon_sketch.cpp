#include "report/derivation/force_polygon_sketch.hpp"

#include "core/index.hpp"
#include "core/tolerance.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/working/force_polygon.hpp"
#include "report/derivation/force_polygon_text.hpp"
#include "report/results/results_text.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kCentimetre = 96 / 2.54; // px: CSS has 96 to the inch
constexpr double kSize = 14;              // px, font size
constexpr double kApart = 1.7; // px from the centre of a double line to each of its lines
constexpr double kPolygonMargin = 10;
constexpr double kNothing = 0.01; // px: shorter lines belong to forces that are zero

Extent extentOf(const ForcePolygon& polygon) {
    Extent box{polygon.spaces.front().point, polygon.spaces.front().point};
    for (const PolygonSpace& space : polygon.spaces) {
        box.low = {std::min(box.low.x, space.point.x), std::min(box.low.y, space.point.y)};
        box.high = {std::max(box.high.x, space.point.x), std::max(box.high.y, space.point.y)};
    }
    return box;
}

// The smallest of 1, 2, 2.5, 5 times a power of ten that is not below a number.
double roundUp(double least) {
    double power = std::pow(10.0, std::floor(std::log10(least)));
    for (const double step : {1.0, 2.0, 2.5, 5.0, 10.0}) {
        if (step * power >= least * (1 - kHair)) {
            return step * power;
        }
    }
    return 10 * power;
}

double forcePerCentimetre(const ForcePolygon& polygon, const PolygonLook& look) {
    const Extent box = extentOf(polygon);
    const double least = kCentimetre * std::max((box.high.x - box.low.x) / look.width,
                                                (box.high.y - box.low.y) / look.height);
    return least > 0 ? roundUp(least) : 1;
}

SketchInk inkOf(const PolygonLine& line) {
    if (!line.member.valid()) {
        return line.reaction ? SketchInk::Reaction : SketchInk::Load;
    }
    return line.force > 0 ? SketchInk::Tension : SketchInk::Compression;
}

// Loads and reactions are arrows, a member in tension is a single line and one in compression a
// double line.
void drawLine(Sketch& sketch, const PolygonLine& line, SketchStroke stroke, bool lit) {
    const Vec2 run = stroke.b - stroke.a;
    const double size = length(run);
    if (size < kNothing) {
        return;
    }
    if (lit) {
        sketch.lines.push_back({stroke.a, stroke.b, SketchInk::Accent, 6, false});
    }
    if (!line.member.valid()) {
        sketch.arrows.push_back({stroke.a, stroke.b, inkOf(line), 1.75});
        return;
    }
    if (line.force > 0) {
        sketch.lines.push_back({stroke.a, stroke.b, inkOf(line), 2, false});
        return;
    }
    const Vec2 side = (kApart / size) * Vec2{-run.y, run.x};
    sketch.lines.push_back({stroke.a + side, stroke.b + side, inkOf(line), 1.25, false});
    sketch.lines.push_back({stroke.a - side, stroke.b - side, inkOf(line), 1.25, false});
}

// A point of the polygon, with all spaces that coincide there.
struct Vertex {
    Vec2 point; // px
    std::string names;
};

std::vector<Vertex> verticesOf(const PhraseBook& book, const ForcePolygon& polygon,
                               const PolygonDrawing& drawing, const std::vector<Vec2>& points) {
    std::vector<bool> touched(polygon.spaces.size());
    for (std::size_t i = 0; i < drawing.lines.size(); ++i) {
        touched[at(polygon.lines[i].from)] = true;
        touched[at(polygon.lines[i].to)] = true;
    }
    std::vector<Vertex> vertices;
    for (std::size_t i = 0; i < polygon.spaces.size(); ++i) {
        if (!touched[i]) {
            continue;
        }
        const std::string name = polygonPointName(polygon.spaces[i]);
        const auto same = std::find_if(vertices.begin(), vertices.end(), [&](const Vertex& vertex) {
            return length(vertex.point - points[i]) < 0.5;
        });
        if (same != vertices.end()) {
            same->names = sayPlain(book, phrase::kListMore, {{"a", same->names}, {"b", name}});
        } else {
            vertices.push_back({points[i], name});
        }
    }
    return vertices;
}

void nameVertices(Sketch& sketch, const std::vector<Vertex>& vertices) {
    Vec2 middle;
    for (const Vertex& vertex : vertices) {
        middle = middle + (1.0 / static_cast<double>(vertices.size())) * vertex.point;
        sketch.discs.push_back({vertex.point, 2.5, SketchInk::Plain, true});
    }
    SketchRoom room = roomOf(sketch);
    for (const Vertex& vertex : vertices) {
        const Vec2 out = vertex.point - middle;
        const double size = length(out);
        placeNear(sketch, room,
                  {.words = {{vertex.names, RunStyle::Strong}}, .at = vertex.point, .size = kSize},
                  size > 0 ? (1 / size) * out : Vec2{1, 0}, 6);
    }
}

std::string scaleWords(const Writer& writer, double perCentimetre) {
    const NumberStyle style{.form = NumberForm::Significant,
                            .digits = 2,
                            .decimalSign = writer.truss.classSettings.decimalSign,
                            .keepZeros = false};
    return sayPlain(writer, phrase::kPolygonScale,
                    {{"force", forceText(writer.truss, perCentimetre, style)}});
}

void holdAround(Sketch& sketch, const std::vector<Vec2>& points) {
    const Vec2 letters{2.5 * kSize, 1.5 * kSize};
    for (const Vec2 point : points) {
        holdRoom(sketch, point - letters);
        holdRoom(sketch, point + letters);
    }
}

// A scale bar of two centimetres below everything else: it stays true when the drawing is enlarged.
// Returns the shift of everything else.
Vec2 addScale(Sketch& sketch, const std::string& scale) {
    const Vec2 moved = fitSketch(sketch, 0);
    const double y = sketch.height + 18;
    const double right = 2 * kCentimetre;
    sketch.lines.push_back({{0, y}, {right, y}, SketchInk::Muted, 1.25, false});
    for (const double x : {0.0, kCentimetre, right}) {
        sketch.lines.push_back({{x, y - 4}, {x, y + 4}, SketchInk::Muted, 1.25, false});
    }
    sketch.words.push_back({.words = plainLine(scale),
                            .at = {right + 10, y},
                            .anchor = SketchAnchor::Start,
                            .ink = SketchInk::Muted,
                            .size = kSize});
    return moved;
}

std::string sentence(const PhraseBook& book, const PolygonDrawing& drawing,
                     const std::string& scale) {
    return sayPlain(book, phrase::kPolygonSays, {{"n", drawing.lines.size()}, {"scale", scale}});
}

double distanceTo(const SketchStroke& stroke, Vec2 point) {
    const Vec2 run = stroke.b - stroke.a;
    const double share = std::clamp(dot(point - stroke.a, run) / dot(run, run), 0.0, 1.0);
    return length(point - stroke.a - share * run);
}

} // namespace

PolygonDrawing polygonDrawing(const Writer& writer, const ForcePolygon& polygon,
                              const PolygonLook& look) {
    PolygonDrawing drawing;
    drawing.perCentimetre = forcePerCentimetre(polygon, look);
    std::vector<Vec2> points;
    for (const PolygonSpace& space : polygon.spaces) {
        const double pixels = kCentimetre / drawing.perCentimetre;
        points.push_back({pixels * space.point.x, -pixels * space.point.y});
    }
    const std::size_t count = look.drawn.value_or(polygon.lines.size());
    for (std::size_t i = 0; i < count; ++i) {
        const PolygonLine& line = polygon.lines[i];
        drawing.lines.push_back({points[at(line.from)], points[at(line.to)]});
        drawLine(drawing.sketch, line, drawing.lines.back(), look.lit == i);
    }
    nameVertices(drawing.sketch, verticesOf(writer, polygon, drawing, points));
    if (look.holdsRoom) {
        holdAround(drawing.sketch, points);
    }
    const std::string scale = scaleWords(writer, drawing.perCentimetre);
    Vec2 moved = addScale(drawing.sketch, scale);
    moved = moved + fitSketch(drawing.sketch, kPolygonMargin);
    for (SketchStroke& line : drawing.lines) {
        line = {line.a + moved, line.b + moved};
    }
    drawing.sketch.says = sentence(writer, drawing, scale);
    return drawing;
}

std::optional<std::size_t> polygonLineAt(const PolygonDrawing& drawing, Vec2 at, double reach) {
    std::optional<std::size_t> nearest;
    for (std::size_t i = 0; i < drawing.lines.size(); ++i) {
        const SketchStroke& line = drawing.lines[i];
        if (length(line.b - line.a) < kNothing) {
            continue;
        }
        const double distance = distanceTo(line, at);
        if (distance <= reach) {
            reach = distance;
            nearest = i;
        }
    }
    return nearest;
}

} // namespace gusset
