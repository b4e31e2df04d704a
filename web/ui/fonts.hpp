#pragma once
// The embedded typefaces (web/ui/fonts: subsets of Inter, and a few signs of DejaVu Sans).

#include "ui/theme.hpp"

namespace gusset {

// Replaces all fonts of the atlas and builds it. Letters outside the subset show as "?".
[[nodiscard]] Fonts buildFonts(ImFontAtlas&, float scale, float textScale);

} // namespace gusset
