#pragma once
// The files of web/ui/fonts as bytes; the build writes the definitions (site/cmake/embed.cmake).

#include <span>

namespace gusset {

[[nodiscard]] std::span<const unsigned char> interRegular();
[[nodiscard]] std::span<const unsigned char> interSemibold();
[[nodiscard]] std::span<const unsigned char> interItalic();
[[nodiscard]] std::span<const unsigned char> dejavuSigns();

} // namespace gusset
