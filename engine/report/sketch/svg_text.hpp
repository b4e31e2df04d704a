#pragma once
// Building blocks of SVG, for every drawing that is saved or printed.

#include "core/vec2.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// A length in px to a hundredth, without trailing zeros. |value| < 1e7.
[[nodiscard]] std::string svgLength(double value);
[[nodiscard]] std::string svgAttribute(const char* name, const std::string& value);
// Escaped, and without the control characters that XML 1.0 can't represent.
[[nodiscard]] std::string svgWords(std::string_view);
// `look`: attributes, each with a space before it.
[[nodiscard]] std::string svgPolygon(const std::vector<Vec2>& corners, const std::string& look);
[[nodiscard]] std::string svgSegment(Vec2 a, Vec2 b, const std::string& look);

} // namespace gusset
