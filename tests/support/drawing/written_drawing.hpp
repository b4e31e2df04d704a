#pragma once
// Drawings of trusses as people make them, for tests: lines in any order and direction, some of
// them joined to polylines, ends that miss each other by a little.

#include "exchange/drawings/lines_found.hpp"
#include "model/truss/truss.hpp"
#include "support/random.hpp"

#include <string>
#include <vector>

namespace gusset::support {

// Corners of lines that were drawn without lifting the pen.
using Stroke = std::vector<Vec2>;

// Its joints and members alone, without joints that no member shows.
[[nodiscard]] Truss asDrawn(const Truss&);

// Every member once, and every end off its joint by at most `off` length units.
[[nodiscard]] std::vector<Stroke> drawnStrokes(const Truss&, double off, Random&);

// Times `scale`, the drawing's units to one of the truss's.
[[nodiscard]] std::string strokesAsDxf(const std::vector<Stroke>&, double scale, Random&);
[[nodiscard]] std::string strokesAsSvg(const std::vector<Stroke>&, double scale, Random&);

// The smallest distance between two joints, or between a joint and a member that does not end
// there.
[[nodiscard]] double clearanceOf(const Truss&);

// Whether both have the same joints, each within `off` of its own place, and the same members; what
// is different, or empty. `shift` is added to the places of `found`.
[[nodiscard]] std::string differenceOf(const Truss& drawn, const Truss& found, Vec2 shift,
                                       double off);

// The pairs of lines of a minimal DXF around entities.
[[nodiscard]] std::string dxfOf(const std::string& entities, const std::string& before = {});
[[nodiscard]] std::string dxfLine(double x1, double y1, double x2, double y2,
                                  const std::string& layer = "0");

} // namespace gusset::support
