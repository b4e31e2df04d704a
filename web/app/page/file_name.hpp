#pragma once
// The file name under which a board is saved.

#include <string>
#include <string_view>

namespace gusset {

inline constexpr std::size_t kLongestFileName = 120; // bytes of UTF-8, including the ending

// The title with this ending (".json", "-code.svg"), or "truss" if nothing is left of the title.
// Letters and digits of every script stay; whatever some file system forbids becomes a hyphen.
[[nodiscard]] std::string fileNameFor(std::string_view title, std::string_view ending);

} // namespace gusset
