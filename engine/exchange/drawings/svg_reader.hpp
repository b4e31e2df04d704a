#pragma once
// Straight lines from an SVG: line, polyline, polygon, rect, path, with the transformations of
// their groups. y is turned up. Scripts, styles and text are passed over, entities never replaced.

#include "exchange/drawings/lines_found.hpp"

#include <string_view>

namespace gusset {

// Layers are the ids of groups. What comes before damage is read, with a note.
[[nodiscard]] Outcome<LinesFound> readSvg(std::string_view text,
                                          const std::vector<std::string>& layers);

} // namespace gusset
