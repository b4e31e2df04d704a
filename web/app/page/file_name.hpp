#pragma once
// What a file of a board is called when it is saved.

#include <string>
#include <string_view>

namespace gusset {

inline constexpr std::size_t kLongestFileName = 120; // bytes of UTF-8, with the ending

// The title with this ending (".json", "-code.svg"), "truss" where nothing is left of the title.
// The letters and figures of every script stay; what some file system forbids becomes a hyphen.
[[nodiscard]] std::string fileNameFor(std::string_view title, std::string_view ending);

} // namespace gusset
