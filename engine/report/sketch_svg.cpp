#include "report/sketch_svg.hpp"

#include "report/results_text.hpp"

#include <array>
#include <cmath>
#include <cstdlib>

namespace gusset {
namespace {

struct InkLook {
    const char* name;
    const char* colour;
};

// By SketchInk.
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

// To a hundredth, without zeros that say nothing. By whole numbers, as a working has thousands.
std::string px(double value) {
    const long hundredths = std::lround(value * 100);
    const long size = std::labs(hundredths);
    std::string text = (hundredths < 0 ? "-" : "") + std::to_string(size / 100);
    if (size % 100 != 0) {
        text += size % 100 < 10 ? ".0" : ".";
        text += std::to_string(size % 10 == 0 ? size % 100 / 10 : size % 100);
    }
    return text;
}

std::string attribute(const char* name, const std::string& value) {
    return std::string(" ") + name + "=\"" + value + "\"";
}

std::string pointText(Vec2 at) { return px(at.x) + " " + px(at.y); }

std::string filled(SketchInk ink) {
    return attribute("class", std::string("ink-") + lookOf(ink).name) +
           attribute("fill", lookOf(ink).colour);
}

// A class of its own: a style sheet that restyles lines would else fill them.
std::string stroked(SketchInk ink, double width) {
    return attribute("class", std::string("line-") + lookOf(ink).name) + attribute("fill", "none") +
           attribute("stroke", lookOf(ink).colour) + attribute("stroke-width", px(width)) +
           attribute("stroke-linecap", "round");
}

std::string polygon(const Vec2* corners, std::size_t count, const std::string& look) {
    std::string points;
    for (std::size_t i = 0; i < count; ++i) {
        points += (i == 0 ? "" : " ") + px(corners[i].x) + "," + px(corners[i].y);
    }
    return "<polygon" + attribute("points", points) + look + "/>\n";
}

std::string segment(Vec2 a, Vec2 b, const std::string& look) {
    return "<path" + attribute("d", "M" + pointText(a) + "L" + pointText(b)) + look + "/>\n";
}

std::string lineText(const SketchLine& line) {
    return segment(line.a, line.b,
                   stroked(line.ink, line.width) +
                       (line.dashed ? attribute("stroke-dasharray", "5 4") : ""));
}

std::string arrowText(const SketchArrow& arrow) {
    const auto head = headOf(arrow);
    return segment(arrow.tail, shaftEnd(arrow), stroked(arrow.ink, arrow.width)) +
           polygon(head.data(), head.size(), filled(arrow.ink));
}

std::string arcText(const SketchArc& arc) {
    const Vec2 start = arc.centre + arc.radius * arc.from;
    const Vec2 end = arc.centre + arc.radius * arc.to;
    // With y down a positive cross product is a turn to the right: less than half of one.
    const char* large = cross(arc.from, arc.to) < 0 ? "1" : "0";
    const std::string path = "M" + pointText(start) + "A" + px(arc.radius) + " " + px(arc.radius) +
                             " 0 " + large + " 1 " + pointText(end);
    return "<path" + attribute("d", path) + stroked(arc.ink, 1) + "/>\n";
}

std::string discText(const SketchDisc& disc) {
    std::string look = filled(disc.ink);
    if (!disc.filled) {
        look = attribute("class", std::string("ring-") + lookOf(disc.ink).name) +
               attribute("fill", "#ffffff") + attribute("stroke", lookOf(disc.ink).colour) +
               attribute("stroke-width", "1.5");
    }
    return "<circle" + attribute("cx", px(disc.at.x)) + attribute("cy", px(disc.at.y)) +
           attribute("r", px(disc.radius)) + look + "/>\n";
}

// XML 1.0 has no way to write a control character, not even by number.
std::string xmlText(const std::string& text) {
    std::string printable;
    for (const char c : text) {
        printable += static_cast<unsigned char>(c) < 0x20 || c == 0x7F ? ' ' : c;
    }
    return escapeHtml(printable);
}

std::string anchorName(SketchAnchor anchor) {
    return anchor == SketchAnchor::Start ? "start" : anchor == SketchAnchor::End ? "end" : "middle";
}

std::string runText(const Run& run, double size, double& lowered) {
    const double drop = run.style == RunStyle::Subscript ? size * kSubscriptDrop : 0;
    std::string look;
    if (drop != lowered) {
        look += attribute("dy", px(drop - lowered));
    }
    lowered = drop;
    if (run.style == RunStyle::Subscript) {
        look += attribute("font-size", px(size * kSubscriptSize));
    } else if (run.style == RunStyle::Variable) {
        look += attribute("font-style", "italic");
    } else if (run.style == RunStyle::Strong) {
        look += attribute("font-weight", "600");
    }
    return "<tspan" + look + ">" + xmlText(run.text) + "</tspan>";
}

std::string wordsText(const SketchWords& words) {
    constexpr double kBaseline = 0.35; // below the middle of the line, of the size
    std::string text = "<text" + attribute("x", px(words.at.x)) +
                       attribute("y", px(words.at.y + kBaseline * words.size)) +
                       attribute("text-anchor", anchorName(words.anchor)) +
                       attribute("font-size", px(words.size)) + filled(words.ink) + ">";
    double lowered = 0;
    for (const Run& run : words.words) {
        text += runText(run, words.size, lowered);
    }
    return text + "</text>\n";
}

} // namespace

std::string svgOf(const Sketch& sketch) {
    const std::string size = px(sketch.width) + " " + px(sketch.height);
    std::string text = "<svg xmlns=\"http://www.w3.org/2000/svg\"" +
                       attribute("viewBox", "0 0 " + size) + attribute("width", px(sketch.width)) +
                       attribute("height", px(sketch.height)) + attribute("role", "img") +
                       attribute("font-family", "sans-serif") + ">\n<title>" +
                       xmlText(sketch.says) + "</title>\n";
    for (const SketchArea& area : sketch.areas) {
        text += polygon(area.corners.data(), area.corners.size(),
                        filled(area.ink) + attribute("fill-opacity", px(kSketchWash)));
    }
    for (const SketchLine& line : sketch.lines) {
        text += lineText(line);
    }
    for (const SketchArc& arc : sketch.arcs) {
        text += arcText(arc);
    }
    for (const SketchArrow& arrow : sketch.arrows) {
        text += arrowText(arrow);
    }
    for (const SketchDisc& disc : sketch.discs) {
        text += discText(disc);
    }
    for (const SketchWords& words : sketch.words) {
        text += wordsText(words);
    }
    return text + "</svg>\n";
}

std::string figureHtml(const Sketch& sketch) {
    return "<figure>\n" + svgOf(sketch) + "</figure>\n";
}

} // namespace gusset
