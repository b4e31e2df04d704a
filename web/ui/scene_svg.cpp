#include "ui/scene_svg.hpp"

#include "report/sketch/svg_text.hpp"

#include <algorithm>
#include <array>

namespace gusset {
namespace {

constexpr double kAir = 12;        // CSS px of margin around the drawing
constexpr double kSignLength = 34; // CSS px of a member's sign beside its meaning

struct Box {
    Vec2 low{1e9, 1e9};
    Vec2 high{-1e9, -1e9};

    void grow(Vec2 at, Vec2 half) {
        low = {std::min(low.x, at.x - half.x), std::min(low.y, at.y - half.y)};
        high = {std::max(high.x, at.x + half.x), std::max(high.y, at.y + half.y)};
    }
    [[nodiscard]] bool isEmpty() const { return low.x >= high.x || low.y >= high.y; }
    [[nodiscard]] bool meets(const Box& other) const {
        return low.x <= other.high.x && other.low.x <= high.x && low.y <= other.high.y &&
               other.low.y <= high.y;
    }
};

Box boxOf(const LineMark& line) {
    Box box;
    const Vec2 half{0.5 * line.width, 0.5 * line.width};
    box.grow(line.a, half);
    box.grow(line.b, half);
    return box;
}

Box boxOf(const TriangleMark& triangle) {
    Box box;
    for (const Vec2 corner : {triangle.a, triangle.b, triangle.c}) {
        box.grow(corner, {1, 1});
    }
    return box;
}

Box boxOf(const DiscMark& disc) {
    Box box;
    const double reach = disc.radius + disc.ring;
    box.grow(disc.at, {reach, reach});
    return box;
}

Box boxOf(const LabelMark& label, const MeasureText& measure) {
    Box box;
    box.grow(label.at, 0.5 * measure(label.text, label.kind) + Vec2{2, 0});
    return box;
}

Box freePart(const Camera& camera) {
    return {{0, camera.coverTop},
            {camera.size.x - camera.coverRight, camera.size.y - camera.coverBottom}};
}

Box frameOf(const Scene& scene, const MeasureText& measure) {
    Box drawn;
    const auto take = [&drawn](const Box& box) {
        drawn.grow(box.low, {});
        drawn.grow(box.high, {});
    };
    std::for_each(scene.lines.begin(), scene.lines.end(), [&](const auto& m) { take(boxOf(m)); });
    std::for_each(scene.triangles.begin(), scene.triangles.end(),
                  [&](const auto& m) { take(boxOf(m)); });
    std::for_each(scene.discs.begin(), scene.discs.end(), [&](const auto& m) { take(boxOf(m)); });
    for (const LabelMark& label : scene.labels) {
        take(boxOf(label, measure));
    }
    const Box seen = freePart(scene.camera);
    if (drawn.isEmpty() || !drawn.meets(seen)) {
        return seen;
    }
    return {
        {std::max(drawn.low.x - kAir, seen.low.x), std::max(drawn.low.y - kAir, seen.low.y)},
        {std::min(drawn.high.x + kAir, seen.high.x), std::min(drawn.high.y + kAir, seen.high.y)}};
}

std::string colourText(Colour colour) {
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text = "#";
    for (const std::uint8_t channel : {colour.red, colour.green, colour.blue}) {
        text += kDigits[channel >> 4];
        text += kDigits[channel & 15];
    }
    return text;
}

std::string stroked(Colour colour, double width) {
    return svgAttribute("stroke", colourText(colour)) +
           svgAttribute("stroke-width", svgLength(width));
}

// The board's dashes include their round ends (shaders/line.frag.glsl); those of SVG do not.
std::string dashes(const LineMark& line) {
    if (line.dash <= 0) {
        return {};
    }
    const double width = line.width;
    const double stroke = std::max(line.dash - width, 0.01);
    return svgAttribute("stroke-dasharray",
                        svgLength(stroke) + " " + svgLength(2 * line.dash - stroke)) +
           svgAttribute("stroke-dashoffset", svgLength(-0.5 * width));
}

std::string textOf(const LineMark& line, const Palette& palette) {
    return svgSegment(line.a, line.b,
                      stroked(lineColour(palette, line.ink), line.width) +
                          svgAttribute("stroke-linecap", "round") + dashes(line));
}

std::string textOf(const TriangleMark& triangle, const Palette& palette) {
    const Colour ink = lineColour(palette, triangle.ink);
    const Colour fill = triangle.filled ? ink : palette.board;
    std::string look = svgAttribute("fill", colourText(fill));
    if (!triangle.filled) {
        look += stroked(ink, 2) + svgAttribute("stroke-linejoin", "round");
    }
    return svgPolygon({triangle.a, triangle.b, triangle.c}, look);
}

// On the board the ring lies within the radius, in SVG on both sides of it.
std::string textOf(const DiscMark& disc, const Palette& palette) {
    return "<circle" + svgAttribute("cx", svgLength(disc.at.x)) +
           svgAttribute("cy", svgLength(disc.at.y)) +
           svgAttribute("r", svgLength(std::max(disc.radius - 0.5 * disc.ring, 0.0))) +
           svgAttribute("fill", colourText(lineColour(palette, disc.fill))) +
           (disc.ring > 0 ? stroked(lineColour(palette, disc.ink), disc.ring) : "") + "/>\n";
}

// The reader may have a different typeface: `textLength` keeps the words on their patch. Inter's em
// is its line height over 1.21.
std::string textOf(const LabelMark& label, const PictureLook& look) {
    constexpr double kLineHeight = 1.21;
    constexpr double kBaseline = 0.36; // below the middle, em
    const Vec2 size = look.measure(label.text, label.kind);
    const double em = size.y / kLineHeight;
    std::string text;
    if (label.backed) {
        const bool tag = label.kind == LabelKind::Joint;
        const double pad = tag ? kTagPad : 2;
        text = "<rect" + svgAttribute("x", svgLength(label.at.x - 0.5 * size.x - pad)) +
               svgAttribute("y", svgLength(label.at.y - 0.5 * size.y)) +
               svgAttribute("width", svgLength(size.x + 2 * pad)) +
               svgAttribute("height", svgLength(size.y)) + svgAttribute("rx", tag ? "5" : "3") +
               svgAttribute("fill", colourText(tag ? look.palette.wash : look.palette.board)) +
               (tag ? stroked(look.palette.rule, 1) : "") + "/>\n";
    }
    return text + "<text" + svgAttribute("x", svgLength(label.at.x)) +
           svgAttribute("y", svgLength(label.at.y + kBaseline * em)) +
           svgAttribute("font-size", svgLength(em)) +
           (label.kind == LabelKind::Joint ? svgAttribute("font-weight", "600") : "") +
           svgAttribute("textLength", svgLength(size.x)) +
           svgAttribute("lengthAdjust", "spacingAndGlyphs") +
           svgAttribute("fill", colourText(textColour(look.palette, label.ink))) + ">" +
           svgWords(label.text) + "</text>\n";
}

std::string openingOf(const Box& frame, const PictureLook& look) {
    const std::string width = svgLength(frame.high.x - frame.low.x);
    const std::string height = svgLength(frame.high.y - frame.low.y);
    const std::string left = svgLength(frame.low.x);
    const std::string top = svgLength(frame.low.y);
    return "<svg xmlns=\"http://www.w3.org/2000/svg\"" +
           svgAttribute("viewBox", left + " " + top + " " + width + " " + height) +
           svgAttribute("width", width) + svgAttribute("height", height) +
           svgAttribute("role", "img") +
           svgAttribute("font-family", "Inter, Helvetica, Arial, sans-serif") +
           svgAttribute("text-anchor", "middle") + ">\n<title>" + svgWords(look.title) +
           "</title>\n<rect" + svgAttribute("x", left) + svgAttribute("y", top) +
           svgAttribute("width", width) + svgAttribute("height", height) +
           svgAttribute("fill", colourText(look.palette.board)) + "/>\n";
}

// Lines of text beside the drawing, with the signs of members among them.
struct Strip {
    std::vector<LabelMark> labels;
    std::vector<LineMark> lines;
    double height = 0;
};

// As members are drawn on the board: one line, two, or dashes.
void addSign(Strip& strip, Ink ink, Vec2 from) {
    constexpr double kTwin = 2.3; // px from the middle of the two lines to each
    const Vec2 along{kSignLength, 0};
    if (ink == Ink::Compression) {
        for (const double aside : {-kTwin, kTwin}) {
            const Vec2 at = from + Vec2{0, aside};
            strip.lines.push_back({at, at + along, 1.7F, ink, 0});
        }
        return;
    }
    const bool zero = ink == Ink::Zero;
    strip.lines.push_back({from, from + along, zero ? 1.6F : 3.0F, ink, zero ? 5.0F : 0.0F});
}

Strip stripOf(const std::vector<PictureLine>& lines, const Box& frame, const PictureLook& look) {
    Strip strip;
    const double width = frame.high.x - frame.low.x - 2 * kAir;
    for (const PictureLine& line : lines) {
        const double left = frame.low.x + kAir + (line.sign ? kSignLength + 8 : 0);
        for (const std::string& words : linesWithin(line.text, width, look.measure)) {
            const Vec2 size = look.measure(words, line.kind);
            const double middle = strip.height + 0.5 * size.y;
            if (line.sign) {
                addSign(strip, *line.sign, {frame.low.x + kAir, middle});
            }
            strip.labels.push_back(
                {words, {left + 0.5 * size.x, middle}, line.ink, line.kind, false});
            strip.height += 1.25 * size.y;
        }
    }
    strip.height += strip.labels.empty() ? 0 : kAir;
    return strip;
}

void moveDown(Strip& strip, double by) {
    for (LabelMark& label : strip.labels) {
        label.at.y += by;
    }
    for (LineMark& line : strip.lines) {
        line.a.y += by;
        line.b.y += by;
    }
}

// The strips above and below the drawing; the frame is extended by them.
std::vector<Strip> stripsOf(Box& frame, const PictureLook& look) {
    std::vector<Strip> strips{stripOf(look.above, frame, look), stripOf(look.below, frame, look)};
    frame.low.y -= strips[0].height;
    moveDown(strips[0], frame.low.y + (strips[0].labels.empty() ? 0 : kAir));
    moveDown(strips[1], frame.high.y);
    frame.high.y += strips[1].height;
    return strips;
}

} // namespace

std::string sceneSvg(const Scene& scene, const PictureLook& look) {
    Box frame = frameOf(scene, look.measure);
    const std::vector<Strip> strips = stripsOf(frame, look);
    std::string text = openingOf(frame, look);
    const auto drawAll = [&](const auto& marks) {
        for (const auto& mark : marks) {
            if (boxOf(mark).meets(frame)) {
                text += textOf(mark, look.palette);
            }
        }
    };
    drawAll(scene.lines);
    drawAll(scene.triangles);
    drawAll(scene.discs);
    for (const LabelMark& label : scene.labels) {
        if (boxOf(label, look.measure).meets(frame)) {
            text += textOf(label, look);
        }
    }
    for (const Strip& strip : strips) {
        for (const LineMark& line : strip.lines) {
            text += textOf(line, look.palette);
        }
        for (const LabelMark& label : strip.labels) {
            text += textOf(label, look);
        }
    }
    return text + "</svg>\n";
}

std::string pictureNote(const AppState& state, const Derived& derived) {
    const std::vector<std::string>& caution = derived.checks.caution;
    std::string note;
    for (std::size_t i = 1;
         showsUse(state) && isOf(derived.checks, state) && i + 1 < caution.size(); ++i) {
        note += caution[i];
    }
    for (const std::string& warning : derived.warnings) {
        note += (note.empty() ? "" : " ") + warning;
    }
    return note;
}

Scene pictureScene(const AppState& state, const Derived& derived, const MeasureText& measure) {
    AppState still = state;
    still.selection = {};
    still.hover = {};
    still.gesture = {};
    still.chain = {};
    still.drawn = {};
    still.menu = {};
    still.field = {};
    still.view.teaches = false;
    return buildScene(still, derived, measure, DrawnOn::Picture);
}

} // namespace gusset
