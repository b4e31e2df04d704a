#include "report/sketch/sketch_svg.hpp"

#include "report/sketch/svg_text.hpp"

#include <array>

namespace gusset {
namespace {

struct InkLook {
    const char* name;
    const char* colour;
};

// Indexed by SketchInk.
constexpr std::array<InkLook, 8> kLooks{{
    {"plain", "#2a2927"},
    {"muted", "#665f53"},
    {"accent", "#0e5a61"},
    {"tension", "#542788"},
    {"compression", "#b35806"},
    {"zero", "#706b62"},
    {"load", "#2a2927"},
    {"reaction", "#0e5a61"},
}};

const InkLook& lookOf(SketchInk ink) { return kLooks[static_cast<std::size_t>(ink)]; }

std::string pointText(Vec2 at) { return svgLength(at.x) + " " + svgLength(at.y); }

std::string filled(SketchInk ink) {
    return svgAttribute("class", std::string("ink-") + lookOf(ink).name) +
           svgAttribute("fill", lookOf(ink).colour);
}

// A separate class for lines: a style sheet that recolours inks would otherwise fill them.
std::string stroked(SketchInk ink, double width) {
    return svgAttribute("class", std::string("line-") + lookOf(ink).name) +
           svgAttribute("fill", "none") + svgAttribute("stroke", lookOf(ink).colour) +
           svgAttribute("stroke-width", svgLength(width)) + svgAttribute("stroke-linecap", "round");
}

enum class Things { Hidden, Marked };

std::string marked(Things things, int thing) {
    return things == Things::Marked && thing != kNoThing
               ? svgAttribute("data-thing", std::to_string(thing))
               : std::string();
}

std::string lineText(const SketchLine& line, Things things) {
    return svgSegment(line.a, line.b,
                      stroked(line.ink, line.width) +
                          (line.dashed ? svgAttribute("stroke-dasharray", "5 4") : "") +
                          marked(things, line.thing));
}

std::string arrowText(const SketchArrow& arrow, Things things) {
    const auto head = headOf(arrow);
    const std::string thing = marked(things, arrow.thing);
    return svgSegment(arrow.tail, shaftEnd(arrow), stroked(arrow.ink, arrow.width) + thing) +
           svgPolygon({head.begin(), head.end()}, filled(arrow.ink) + thing);
}

std::string arcText(const SketchArc& arc) {
    const Vec2 start = arc.centre + arc.radius * arc.from;
    const Vec2 end = arc.centre + arc.radius * arc.to;
    // With y down, a positive cross product is a clockwise turn of less than 180°.
    const char* large = cross(arc.from, arc.to) < 0 ? "1" : "0";
    const std::string path = "M" + pointText(start) + "A" + svgLength(arc.radius) + " " +
                             svgLength(arc.radius) + " 0 " + large + " 1 " + pointText(end);
    return "<path" + svgAttribute("d", path) + stroked(arc.ink, 1) + "/>\n";
}

std::string discText(const SketchDisc& disc) {
    std::string look = filled(disc.ink);
    if (!disc.filled) {
        look = svgAttribute("class", std::string("ring-") + lookOf(disc.ink).name) +
               svgAttribute("fill", "#ffffff") + svgAttribute("stroke", lookOf(disc.ink).colour) +
               svgAttribute("stroke-width", "1.5");
    }
    return "<circle" + svgAttribute("cx", svgLength(disc.at.x)) +
           svgAttribute("cy", svgLength(disc.at.y)) + svgAttribute("r", svgLength(disc.radius)) +
           look + "/>\n";
}

std::string anchorName(SketchAnchor anchor) {
    return anchor == SketchAnchor::Start ? "start" : anchor == SketchAnchor::End ? "end" : "middle";
}

std::string runText(const Run& run, double size, double& lowered) {
    const double drop = run.style == RunStyle::Subscript ? size * kSubscriptDrop : 0;
    std::string look;
    if (drop != lowered) {
        look += svgAttribute("dy", svgLength(drop - lowered));
    }
    lowered = drop;
    if (run.style == RunStyle::Subscript) {
        look += svgAttribute("font-size", svgLength(size * kSubscriptSize));
    } else if (run.style == RunStyle::Variable) {
        look += svgAttribute("font-style", "italic");
    } else if (run.style == RunStyle::Strong) {
        look += svgAttribute("font-weight", "600");
    }
    return "<tspan" + look + ">" + svgWords(run.text) + "</tspan>";
}

std::string lengthText(double length) {
    return length > 0 ? svgAttribute("textLength", svgLength(length)) +
                            svgAttribute("lengthAdjust", "spacingAndGlyphs")
                      : std::string();
}

std::string wordsText(const SketchWords& words, Things things) {
    constexpr double kBaseline = 0.35; // below the middle of the line, in font sizes
    std::string text = "<text" + svgAttribute("x", svgLength(words.at.x)) +
                       svgAttribute("y", svgLength(words.at.y + kBaseline * words.size)) +
                       svgAttribute("text-anchor", anchorName(words.anchor)) +
                       svgAttribute("font-size", svgLength(words.size)) + filled(words.ink) +
                       marked(things, words.thing) + lengthText(words.length) + ">";
    double lowered = 0;
    for (const Run& run : words.words) {
        text += runText(run, words.size, lowered);
    }
    return text + "</text>\n";
}

std::string opening(const Sketch& sketch) {
    const std::string size = svgLength(sketch.width) + " " + svgLength(sketch.height);
    return "<svg xmlns=\"http://www.w3.org/2000/svg\"" + svgAttribute("viewBox", "0 0 " + size) +
           svgAttribute("width", svgLength(sketch.width)) +
           svgAttribute("height", svgLength(sketch.height)) + svgAttribute("role", "img") +
           svgAttribute("font-family", "sans-serif") + ">\n<title>" + svgWords(sketch.says) +
           "</title>\n";
}

std::string marksOf(const Sketch& sketch, Things things) {
    std::string text;
    for (const SketchArea& area : sketch.areas) {
        if (area.corners.front() == area.corners[1]) { // holds room
            continue;
        }
        text += svgPolygon({area.corners.begin(), area.corners.end()},
                           filled(area.ink) + svgAttribute("fill-opacity", svgLength(kSketchWash)));
    }
    for (const SketchLine& line : sketch.lines) {
        text += lineText(line, things);
    }
    for (const SketchArc& arc : sketch.arcs) {
        text += arcText(arc);
    }
    for (const SketchArrow& arrow : sketch.arrows) {
        text += arrowText(arrow, things);
    }
    for (const SketchDisc& disc : sketch.discs) {
        text += discText(disc);
    }
    for (const SketchWords& words : sketch.words) {
        text += wordsText(words, things);
    }
    return text;
}

std::string svgText(const Sketch& sketch, Things things) {
    return opening(sketch) + marksOf(sketch, things) + "</svg>\n";
}

// When a frame is shown, in per cent of the whole time: visible from `from` to `to`.
std::string keyframes(const std::string& name, double from, double to) {
    const auto percent = [](double share) { return svgLength(100 * share) + "%"; };
    const std::string hidden = "{visibility:hidden}";
    return "@keyframes " + name + "{" + (from > 0 ? "0%" + hidden : std::string()) + percent(from) +
           "{visibility:visible}" +
           (to < 1 ? percent(to) + hidden + "100%" + hidden : "100%{visibility:visible}") + "}\n";
}

} // namespace

std::string svgOf(const Sketch& sketch) { return svgText(sketch, Things::Hidden); }
std::string svgToPointAt(const Sketch& sketch) { return svgText(sketch, Things::Marked); }

// Without style sheets, and for those who want no motion, the last frame alone is visible.
std::string svgOfFrames(const std::vector<SketchFrame>& frames, AnimationEnd end) {
    double all = 0;
    for (const SketchFrame& frame : frames) {
        all += frame.seconds;
    }
    std::string rules = "g{visibility:hidden}\ng:last-of-type{visibility:visible}\n"
                        "@media (prefers-reduced-motion:no-preference){\ng{animation:" +
                        svgLength(all) + "s step-end " +
                        (end == AnimationEnd::Repeats ? "infinite" : "1 forwards") + "}\n";
    std::string names;
    std::string groups;
    double now = 0;
    for (std::size_t i = 0; i < frames.size(); ++i) {
        const std::string name = "frame" + std::to_string(i + 1);
        const double until = i + 1 < frames.size() ? now + frames[i].seconds : all;
        names += keyframes(name, now / all, until / all);
        rules += "g:nth-of-type(" + std::to_string(i + 1) + "){animation-name:" + name + "}\n";
        groups += "<g>\n" + marksOf(frames[i].sketch, Things::Hidden) + "</g>\n";
        now = until;
    }
    return opening(frames.back().sketch) + "<style>\n" + names + rules + "}\n</style>\n" + groups +
           "</svg>\n";
}

std::string figureHtml(const Sketch& sketch) {
    constexpr double kBeside = 380; // px: the widest that leaves room for the text beside it
    const char* tag = sketch.width > kBeside ? "<figure class=\"wide\">\n" : "<figure>\n";
    return tag + svgOf(sketch) + "</figure>\n";
}

} // namespace gusset
