#include "ui/palette.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cmath>

using namespace gusset;

// Limits of WCAG 2.2 (W3C, 2023): 1.4.3 text 4.5 : 1, 1.4.11 marks and boundaries 3 : 1; and 1.4.6,
// 7 : 1 for text, in the theme for sunlight.

namespace {

double onWorsePaper(const Palette& palette, Colour colour) {
    return std::fmin(contrast(colour, palette.board), contrast(colour, palette.notebook));
}

double hueDegrees(Colour c) { // hexagon hue, 0 red, 120 green, 240 blue
    const double high = std::fmax(c.red, std::fmax(c.green, c.blue));
    const double range = high - std::fmin(c.red, std::fmin(c.green, c.blue));
    if (high == c.red) {
        return std::fmod(60 * (c.green - c.blue) / range + 360, 360);
    }
    return high == c.green ? 120 + 60 * (c.blue - c.red) / range
                           : 240 + 60 * (c.red - c.green) / range;
}

double hueApart(Colour a, Colour b) {
    const double apart = std::fabs(hueDegrees(a) - hueDegrees(b));
    return std::fmin(apart, 360 - apart);
}

} // namespace

TEST_CASE("Black on white has contrast 21, and a colour on itself 1") {
    CHECK(std::fabs(contrast({0, 0, 0}, {255, 255, 255}) - 21) < 1e-9);
    CHECK(contrast({14, 90, 97}, {14, 90, 97}) == 1);
    // #777777 on white is the well-known near miss of 4.5.
    CHECK(std::fabs(contrast({0x77, 0x77, 0x77}, {255, 255, 255}) - 4.48) < 0.005);
}

TEST_CASE("Words and figures can be read on either paper in every theme") {
    for (const PaletteName name : kPaletteNames) {
        const Palette& palette = paletteOf(name);
        const double least = name == PaletteName::Sun ? 7 : 4.5;
        CAPTURE(static_cast<int>(name));
        for (const Ink ink :
             {Ink::Tension, Ink::Compression, Ink::Zero, Ink::Plain, Ink::Muted, Ink::Accent,
              Ink::Load, Ink::Reaction, Ink::Dimension, Ink::Warning}) {
            CAPTURE(static_cast<int>(ink));
            CHECK(onWorsePaper(palette, textColour(palette, ink)) >= least);
        }
        CHECK(contrast(palette.onAccent, palette.accent) >= least);
        CHECK(contrast(palette.ink, palette.wash) >= least);
        CHECK(contrast(palette.ink, palette.accentWash) >= least);
        CHECK(contrast(palette.tensionText, palette.accentWash) >= 4.5);
        CHECK(contrast(palette.compressionText, palette.accentWash) >= 4.5);
        CHECK(contrast(palette.muted, palette.wash) >= 4.5);
        CHECK(contrast(palette.accent, palette.accentWash) >= 4.5);
    }
}

TEST_CASE("The ink of tension is told apart from that of words in every theme") {
    const auto apart = [](Colour a, Colour b) { // in the three channels together
        return std::abs(a.red - b.red) + std::abs(a.green - b.green) + std::abs(a.blue - b.blue);
    };
    for (const PaletteName name : kPaletteNames) {
        const Palette& palette = paletteOf(name);
        CAPTURE(static_cast<int>(name));
        CHECK(apart(palette.tensionText, palette.ink) >= 120);
        CHECK(apart(palette.compressionText, palette.ink) >= 90);
    }
}

TEST_CASE("Lines and boundaries stand out from either paper in every theme") {
    for (const PaletteName name : kPaletteNames) {
        const Palette& palette = paletteOf(name);
        CAPTURE(static_cast<int>(name));
        for (const Ink ink :
             {Ink::Tension, Ink::Compression, Ink::Zero, Ink::Plain, Ink::Muted, Ink::Accent,
              Ink::Load, Ink::Reaction, Ink::Dimension, Ink::Warning}) {
            CAPTURE(static_cast<int>(ink));
            CHECK(onWorsePaper(palette, lineColour(palette, ink)) >= 3);
        }
        CHECK(onWorsePaper(palette, palette.edge) >= 3);
    }
}

TEST_CASE("The grid is there and stays behind the drawing") {
    for (const PaletteName name : kPaletteNames) {
        const Palette& palette = paletteOf(name);
        CAPTURE(static_cast<int>(name));
        CHECK(contrast(palette.grid, palette.board) > 1.05);
        CHECK(contrast(palette.gridStrong, palette.board) > contrast(palette.grid, palette.board));
        CHECK(contrast(palette.gridStrong, palette.board) < 2);
    }
}

TEST_CASE("Accent, tension and compression are three different hues") {
    for (const PaletteName name : kPaletteNames) {
        const Palette& palette = paletteOf(name);
        CAPTURE(static_cast<int>(name));
        CHECK(hueApart(palette.accent, palette.tension) > 60);
        CHECK(hueApart(palette.accent, palette.compression) > 60);
        CHECK(hueApart(palette.tension, palette.compression) > 60);
        CHECK(hueApart(palette.accent, palette.warning) > 60);
    }
}

TEST_CASE("The theme follows the system until one is chosen") {
    Viewport viewport;
    CHECK(paletteFor(ThemeChoice::System, viewport) == PaletteName::Paper);
    viewport.dark = true;
    CHECK(paletteFor(ThemeChoice::System, viewport) == PaletteName::Dark);
    CHECK(paletteFor(ThemeChoice::Sun, viewport) == PaletteName::Sun);
    viewport.dark = false;
    viewport.highContrast = true;
    CHECK(paletteFor(ThemeChoice::System, viewport) == PaletteName::Sun);
    CHECK(paletteFor(ThemeChoice::Paper, viewport) == PaletteName::Paper);
}
