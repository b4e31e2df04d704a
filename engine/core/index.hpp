#pragma once
// Between the counts of containers and the whole numbers that are reckoned with.

#include <cstddef>

namespace gusset {

[[nodiscard]] constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }
[[nodiscard]] constexpr int toInt(std::size_t count) { return static_cast<int>(count); }

} // namespace gusset
