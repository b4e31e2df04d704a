#pragma once
// The picture of the whole truss that is saved: laid out for its own size and not for the screen's,
// so that every value stands on it; what still finds no room is listed under the drawing.

#include "canvas/scene/scene.hpp"
#include "ui/palette.hpp"
#include "ui/scene_svg.hpp"

#include <string>

namespace gusset {

[[nodiscard]] Scene wholeScene(const AppState&, const Derived&, const MeasureText&);
// The scene with the title and the loads it is under above it, and below it the signs of tension
// and compression, values without room, and notes.
[[nodiscard]] std::string wholePicture(const AppState&, const Derived&, const MeasureText&,
                                       const Palette&);
// The colours of a picture: the theme's, or on white paper those of a light theme.
[[nodiscard]] Palette picturePalette(PaletteName theme, bool white);

} // namespace gusset
