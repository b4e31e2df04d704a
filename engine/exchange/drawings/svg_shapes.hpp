#pragma once
// Paths, lists of points and transformations of SVG. Private to exchange/drawings.
// Source: W3C, Scalable Vector Graphics (SVG) 2, 8.5 (transform), 9.3 (path data), 10 (shapes).

#include "core/vec2.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// x' = a x + c y + e, y' = b x + d y + f
struct SvgMatrix {
    double a = 1;
    double b = 0;
    double c = 0;
    double d = 1;
    double e = 0;
    double f = 0;

    [[nodiscard]] Vec2 of(Vec2 at) const {
        return {a * at.x + c * at.y + e, b * at.x + d * at.y + f};
    }
    [[nodiscard]] SvgMatrix times(const SvgMatrix& inner) const;
};

// "translate(3) rotate(30 1 2)"; nothing if it can't be read.
[[nodiscard]] std::optional<SvgMatrix> svgTransform(std::string_view);

struct SvgStroke {
    Vec2 from;
    Vec2 to;
};
struct SvgPath {
    std::vector<SvgStroke> strokes;
    std::size_t curves = 0; // passed over
    std::string unread;     // where reading ended, if not at the end
};
[[nodiscard]] SvgPath svgPath(std::string_view d);

// Pairs of numbers; nothing if they are none.
[[nodiscard]] std::optional<std::vector<Vec2>> svgPoints(std::string_view);
// "12", "12px", "3.5mm": in user units, 96 to an inch.
[[nodiscard]] std::optional<double> svgLength(std::string_view);

} // namespace gusset
