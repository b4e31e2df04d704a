#pragma once
// A truss from a file of any of the kinds that are read: DXF, SVG, a table of joints and members.

#include "exchange/drawings/traced.hpp"

#include <string_view>

namespace gusset {

// By what is in the file. Fails with words for what is no drawing, or one of another kind.
[[nodiscard]] Outcome<Traced> readDrawing(std::string_view text, const DrawingWishes&);

inline constexpr std::size_t kLargestDrawing = 8u << 20; // bytes

} // namespace gusset
