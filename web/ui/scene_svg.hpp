#pragma once
// The board as a picture: a scene as a standalone SVG 1.1 file, in the colours of a theme, on its
// paper and without its grid. It is here and not in canvas/ because canvas/ knows no colours.

#include "canvas/scene/scene.hpp"
#include "ui/palette.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// Beside the drawing, wrapped and at its left edge.
struct PictureLine {
    std::string text;
    Ink ink = Ink::Plain;
    LabelKind kind = LabelKind::Hint;
    std::optional<Ink> sign{}; // how a member of that kind is drawn, before the text
};

struct PictureLook {
    const Palette& palette;
    const MeasureText& measure; // as used to build the scene: words keep the room they were given
    std::string_view title;     // the picture's name for those who can't see it; escaped here
    std::vector<PictureLine> above{};
    std::vector<PictureLine> below{};
};

// Cropped to what is drawn within the uncovered part of the board, with a small margin; all of that
// part if nothing is drawn.
[[nodiscard]] std::string sceneSvg(const Scene&, const PictureLook&);

// The note under a picture that shows the use of members: what the checks leave out. The rest of
// the caution is on the drawing.
[[nodiscard]] std::string pictureNote(const AppState&, const Derived&);

// The scene of the state without anything that belongs to a pointer: no selection, no stroke in
// progress.
[[nodiscard]] Scene pictureScene(const AppState&, const Derived&, const MeasureText&);

} // namespace gusset
