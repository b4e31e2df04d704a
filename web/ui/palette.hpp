#pragma once
// The colours of the three themes, as tables that a test can read: a drafting table by day, the
// same in a dim room, and one for sunlight. Tension and compression are the purple and orange of
// ColorBrewer's diverging scheme PuOr (C. Brewer and M. Harrower, colorbrewer2.org), which stay
// distinct for colour-blind readers; grey is zero. The accent is a blue-green, unlike either of
// them.

#include "app/state/layout.hpp"
#include "canvas/scene/scene.hpp"

#include <array>
#include <cstdint>

namespace gusset {

struct Colour { // sRGB
    std::uint8_t red = 0;
    std::uint8_t green = 0;
    std::uint8_t blue = 0;
    std::uint8_t alpha = 255;

    friend constexpr bool operator==(const Colour&, const Colour&) = default;
};

struct Palette {
    Colour board;      // paper under the drawing
    Colour notebook;   // paper of the notebook, header and tools
    Colour wash;       // under the item that the pointer is on
    Colour accentWash; // under what is selected
    Colour grid;
    Colour gridStrong;
    Colour rule;     // hairlines
    Colour edge;     // around fields and buttons: a boundary that must be visible
    Colour ink;      // text and the plain drawing
    Colour muted;    // secondary text
    Colour accent;   // what is highlighted, selected or to be pressed
    Colour onAccent; // text on a patch of accent
    Colour warning;
    Colour tension; // lines
    Colour compression;
    Colour zero;
    Colour tensionText; // and figures
    Colour compressionText;
    Colour zeroText;
};

enum class PaletteName { Paper, Dark, Sun };
inline constexpr std::array kPaletteNames{PaletteName::Paper, PaletteName::Dark, PaletteName::Sun};

[[nodiscard]] const Palette& paletteOf(PaletteName);
// What the user chose, or what the system asks for.
[[nodiscard]] PaletteName paletteFor(ThemeChoice, const Viewport&);

[[nodiscard]] Colour lineColour(const Palette&, Ink); // for lines and filled marks
[[nodiscard]] Colour textColour(const Palette&, Ink); // for figures and words

// Contrast ratio of relative luminances as defined in WCAG 2.2, 1 to 21; alpha is ignored.
[[nodiscard]] double contrast(Colour, Colour);

} // namespace gusset
