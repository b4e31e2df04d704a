#pragma once
// Where two lines cross. Private to exchange/drawings.

#include "exchange/drawings/lines_found.hpp"

#include <optional>

namespace gusset {

// Nothing if an end of one lies on the other, or if they don't meet.
[[nodiscard]] inline std::optional<Vec2> crossing(const DrawnLine& one, const DrawnLine& other) {
    const Vec2 along = one.to - one.from;
    const Vec2 across = other.to - other.from;
    const double from = cross(along, other.from - one.from);
    const double to = cross(along, other.to - one.from);
    const double start = cross(across, one.from - other.from);
    const double end = cross(across, one.to - other.from);
    const bool isCrossed = ((from > 0 && to < 0) || (from < 0 && to > 0)) &&
                           ((start > 0 && end < 0) || (start < 0 && end > 0));
    return isCrossed ? std::optional(other.from + (from / (from - to)) * across) : std::nullopt;
}

} // namespace gusset
