#pragma once
// An influence line as a drawing: the path as its axis, joints at their true places, ordinates up
// when positive, areas washed by their sign. Signs stand in figures too, so that nothing hangs on
// colour.

#include "report/sketch/sketch.hpp"
#include "report/text/writer.hpp"
#include "statics/moving/influence_report.hpp"

#include <optional>

namespace gusset {

struct InfluenceLook {
    double width = 640;           // px, with margins; at least kNarrowestPlot
    std::optional<double> mark{}; // m from the start of the path: where it is read off
};
inline constexpr double kNarrowestPlot = 240;

// Where a point of the plot is on the path, for a finger that reads it off: m from its start, held
// to its ends. `x`: px of the sketch.
[[nodiscard]] double readOffAt(const Truss&, const InfluenceReport&, const InfluenceLook&,
                               double x);
[[nodiscard]] Sketch influenceSketch(const Writer&, const InfluenceReport&, const InfluenceLook&);

} // namespace gusset
