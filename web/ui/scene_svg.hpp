#pragma once
// The board as a picture: a scene as SVG 1.1 that stands alone as a file, in the colours of a
// theme, on its paper and without its grid. Here and not in canvas/, which knows no colours.

#include "canvas/scene/scene.hpp"
#include "ui/palette.hpp"

#include <string>
#include <string_view>

namespace gusset {

struct PictureLook {
    const Palette& palette;
    const MeasureText& measure; // as the scene was built with: words keep the room they were given
    std::string_view title;     // the picture's name for those who can't see it; escaped here
    std::string_view note{};    // set under the drawing, broken into lines; or nothing
};

// Cropped to what is drawn within the part of the board that nothing covers, with a little paper
// around; that part whole when nothing is drawn.
[[nodiscard]] std::string sceneSvg(const Scene&, const PictureLook&);

// What is to stand under a picture that shows the use of members: what checks leave out. The rest
// of the caution stands on the drawing.
[[nodiscard]] std::string pictureNote(const AppState&, const Derived&);

// The scene of the state without what belongs to a pointer: no selection, no stroke in hand.
[[nodiscard]] Scene pictureScene(const AppState&, const Derived&, const MeasureText&);

} // namespace gusset
