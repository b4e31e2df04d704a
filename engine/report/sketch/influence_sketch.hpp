#pragma once
// An influence line as a drawing: the path as its axis, joints at their true places, positive
// ordinates upwards, areas shaded by sign. Signs are written as well, so that nothing depends on
// colour alone.

#include "report/sketch/sketch.hpp"
#include "report/text/writer.hpp"
#include "statics/moving/influence_report.hpp"

#include <optional>

namespace gusset {

struct InfluenceLook {
    double width = 640;           // px, with margins; at least kNarrowestPlot
    std::optional<double> mark{}; // m from the start of the path: where the line is read off
};
inline constexpr double kNarrowestPlot = 240;

// The position on the path under a point of the plot, for reading the line off with a finger: m
// from its start, clamped to its ends. `x`: px of the sketch.
[[nodiscard]] double readOffAt(const Truss&, const InfluenceReport&, const InfluenceLook&,
                               double x);
[[nodiscard]] Sketch influenceSketch(const Writer&, const InfluenceReport&, const InfluenceLook&);

} // namespace gusset
