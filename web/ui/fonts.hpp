#pragma once
// The embedded typefaces (web/ui/fonts: subsets of Inter, and a few symbols of DejaVu Sans).

#include "ui/foreign.hpp"
#include "ui/theme.hpp"

namespace gusset {

// Replaces all fonts of the atlas and builds it. Letters outside the subset are drawn by `draw`
// (see ui/foreign); those that it can't draw show as "?".
[[nodiscard]] Fonts buildFonts(ImFontAtlas&, float scale, ForeignRuns&, DrawRun);

} // namespace gusset
