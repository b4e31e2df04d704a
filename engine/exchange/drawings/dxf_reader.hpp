#pragma once
// Straight lines and marks of joints from an ASCII DXF of any release: LINE, LWPOLYLINE, POLYLINE,
// POINT, INSERT. Everything else is counted and told.

#include "exchange/drawings/lines_found.hpp"

#include <string_view>

namespace gusset {

// What comes before a cut is read, with a note; fails if the file is damaged, if it has no
// ENTITIES, or at a layer that is not there.
[[nodiscard]] Outcome<LinesFound> readDxf(std::string_view text,
                                          const std::vector<std::string>& layers);

} // namespace gusset
