#pragma once
// The force polygon in words: its lines by Bow's notation as a table, or why there is none.

#include "hand/polygon/force_polygon.hpp"
#include "report/derivation/passage.hpp"
#include "report/text/writer.hpp"

#include <string>

namespace gusset {

// The point of a space: "a" of the outer space A, "1" of an inner one.
[[nodiscard]] std::string polygonPointName(const PolygonSpace&);
// "AC is the line b–1": lower-case letters and numerals name points of the polygon.
[[nodiscard]] std::string polygonLineName(const ForcePolygon&, const PolygonLine&);
// How a line of the polygon comes to be drawn: the same sentence for two lines that meet.
[[nodiscard]] std::string polygonLineSentence(const Writer&, const ForcePolygon&, std::size_t line);
[[nodiscard]] Passage forcePolygonPassage(const Writer&, const ForcePolygon&);
[[nodiscard]] std::string forcePolygonText(const Writer&, const ForcePolygon&);
[[nodiscard]] std::string forcePolygonHtml(const Writer&, const ForcePolygon&);

} // namespace gusset
