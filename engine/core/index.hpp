#pragma once
// Conversions between container sizes and signed indices.

#include <cstddef>

namespace gusset {

[[nodiscard]] constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }
[[nodiscard]] constexpr int toInt(std::size_t count) { return static_cast<int>(count); }

} // namespace gusset
