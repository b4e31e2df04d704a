#pragma once
// What a drawing holds of a truss: straight lines and marks, before anything is made of them.

#include "core/outcome.hpp"
#include "core/vec2.hpp"
#include "model/truss/units.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

struct DrawnLine {
    Vec2 from; // drawing units, y up
    Vec2 to;
    friend bool operator==(const DrawnLine&, const DrawnLine&) = default;
};

struct LinesFound {
    std::vector<DrawnLine> lines;
    std::vector<Vec2> marks;          // places at which the drawing marks a joint
    std::optional<LengthUnit> unit{}; // of the drawing, if it says so
    bool movesToCorner = false;       // its origin means nothing: the truss begins at 0, 0
    Issues notes{};                   // what was passed over, and where
};

// What whoever opens a drawing asks for.
struct DrawingWishes {
    std::optional<LengthUnit> unit{};  // in place of what the drawing says
    std::optional<double> tolerance{}; // drawing units, ≥ 0; none: chosen from the drawing
    std::optional<double> width{};     // of the whole truss, in its unit: sets the scale
    std::vector<std::string> layers{}; // to be read; none: all that are shown
};

inline constexpr std::size_t kMostDrawnLines = 10'000;
inline constexpr double kLargestDrawn = 1e12; // of a coordinate; no drawing is that large

} // namespace gusset
