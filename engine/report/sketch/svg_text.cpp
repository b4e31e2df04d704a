#include "report/sketch/svg_text.hpp"

#include "report/results/results_text.hpp"
#include "report/text/html.hpp"

#include <cmath>
#include <cstdlib>

namespace gusset {

// In integer arithmetic, for speed: a working has thousands of these.
std::string svgLength(double value) {
    const long hundredths = std::lround(value * 100);
    const long size = std::labs(hundredths);
    std::string text = (hundredths < 0 ? "-" : "") + std::to_string(size / 100);
    if (size % 100 != 0) {
        text += size % 100 < 10 ? ".0" : ".";
        text += std::to_string(size % 10 == 0 ? size % 100 / 10 : size % 100);
    }
    return text;
}

std::string svgAttribute(const char* name, const std::string& value) {
    return std::string(" ") + name + "=\"" + value + "\"";
}

std::string svgWords(std::string_view text) {
    std::string printable;
    for (const char c : text) {
        printable += static_cast<unsigned char>(c) < 0x20 || c == 0x7F ? ' ' : c;
    }
    return escapeHtml(printable);
}

std::string svgPolygon(const std::vector<Vec2>& corners, const std::string& look) {
    std::string points;
    for (const Vec2 corner : corners) {
        points += (points.empty() ? "" : " ") + svgLength(corner.x) + "," + svgLength(corner.y);
    }
    return "<polygon" + svgAttribute("points", points) + look + "/>\n";
}

std::string svgSegment(Vec2 a, Vec2 b, const std::string& look) {
    const std::string path =
        "M" + svgLength(a.x) + " " + svgLength(a.y) + "L" + svgLength(b.x) + " " + svgLength(b.y);
    return "<path" + svgAttribute("d", path) + look + "/>\n";
}

} // namespace gusset
