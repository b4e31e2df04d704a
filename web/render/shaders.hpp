#pragma once
// The files of shaders/, built into the page (web/CMakeLists.txt), so that they need no download of
// their own.

#include <span>

namespace gusset {

using ShaderSource = std::span<const unsigned char>;

[[nodiscard]] ShaderSource gridVert();
[[nodiscard]] ShaderSource gridFrag();
[[nodiscard]] ShaderSource lineVert();
[[nodiscard]] ShaderSource lineFrag();
[[nodiscard]] ShaderSource triangleVert();
[[nodiscard]] ShaderSource triangleFrag();
[[nodiscard]] ShaderSource discVert();
[[nodiscard]] ShaderSource discFrag();

} // namespace gusset
