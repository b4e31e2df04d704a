#include "ui/palette.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr Colour hex(std::uint32_t rgb) {
    return {static_cast<std::uint8_t>(rgb >> 16), static_cast<std::uint8_t>(rgb >> 8 & 0xff),
            static_cast<std::uint8_t>(rgb & 0xff)};
}

// PuOr of 11 classes, the ends of its two arms.
constexpr Colour kOrangeDeep = hex(0x7f3b08);
constexpr Colour kOrange = hex(0xb35806);
constexpr Colour kOrangePale = hex(0xfdb863);
constexpr Colour kPurplePale = hex(0xb2abd2);
constexpr Colour kPurple = hex(0x542788);

constexpr Palette kPaper{
    .board = hex(0xf6f1e4),
    .notebook = hex(0xfcf9f2),
    .wash = hex(0xf1ead9),
    .accentWash = hex(0xdfebe6),
    .grid = hex(0xebe3d1),
    .gridStrong = hex(0xdcd1ba),
    .rule = hex(0xddd4c2),
    .edge = hex(0x8b8272),
    .ink = hex(0x2a2927),
    .muted = hex(0x665f53),
    .accent = hex(0x0e5a61),
    .onAccent = hex(0xfcf9f2),
    .warning = hex(0x9c1c34),
    .tension = kPurple,
    .compression = kOrange,
    .zero = hex(0x77736b),
    .tensionText = kPurple,
    .compressionText = kOrangeDeep,
    .zeroText = hex(0x665f53),
};

constexpr Palette kDark{
    .board = hex(0x1f1d1a),
    .notebook = hex(0x282521),
    .wash = hex(0x35312b),
    .accentWash = hex(0x24403f),
    .grid = hex(0x2c2925),
    .gridStrong = hex(0x3a362f),
    .rule = hex(0x474138),
    .edge = hex(0x8f8676),
    .ink = hex(0xeee7da),
    .muted = hex(0xb3aa9a),
    .accent = hex(0x83cbc4),
    .onAccent = hex(0x1f1d1a),
    .warning = hex(0xff9aa2),
    .tension = kPurplePale,
    .compression = kOrangePale,
    .zero = hex(0x98917f),
    .tensionText = hex(0xb9a0f0),
    .compressionText = kOrangePale,
    .zeroText = hex(0xb3aa9a),
};

constexpr Palette kSun{
    .board = hex(0xffffff),
    .notebook = hex(0xffffff),
    .wash = hex(0xe8e8e8),
    .accentWash = hex(0xd0e6e6),
    .grid = hex(0xdedede),
    .gridStrong = hex(0xc2c2c2),
    .rule = hex(0x9a9a9a),
    .edge = hex(0x3d3d3d),
    .ink = hex(0x000000),
    .muted = hex(0x3a3a3a),
    .accent = hex(0x00434a),
    .onAccent = hex(0xffffff),
    .warning = hex(0x8a0020),
    .tension = kPurple,
    .compression = kOrange,
    .zero = hex(0x5a5a5a),
    .tensionText = kPurple,
    .compressionText = kOrangeDeep,
    .zeroText = hex(0x3a3a3a),
};

double linear(std::uint8_t channel) {
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double luminance(Colour c) {
    return 0.2126 * linear(c.red) + 0.7152 * linear(c.green) + 0.0722 * linear(c.blue);
}

} // namespace

const Palette& paletteOf(PaletteName name) {
    switch (name) {
    case PaletteName::Dark:
        return kDark;
    case PaletteName::Sun:
        return kSun;
    case PaletteName::Paper:
        break;
    }
    return kPaper;
}

PaletteName paletteFor(ThemeChoice choice, const Viewport& viewport) {
    switch (choice) {
    case ThemeChoice::Paper:
        return PaletteName::Paper;
    case ThemeChoice::Dark:
        return PaletteName::Dark;
    case ThemeChoice::Sun:
        return PaletteName::Sun;
    case ThemeChoice::System:
        break;
    }
    if (viewport.dark) {
        return PaletteName::Dark;
    }
    return viewport.highContrast ? PaletteName::Sun : PaletteName::Paper;
}

Colour lineColour(const Palette& palette, Ink ink) {
    switch (ink) {
    case Ink::Tension:
        return palette.tension;
    case Ink::Compression:
        return palette.compression;
    case Ink::Zero:
        return palette.zero;
    case Ink::Muted:
        return palette.edge;
    case Ink::Dimension:
        return palette.edge;
    case Ink::Accent:
        return palette.accent;
    case Ink::Reaction:
        return palette.accent;
    case Ink::Warning:
        return palette.warning;
    case Ink::Paper:
        return palette.board;
    case Ink::Halo:
        return palette.accentWash;
    case Ink::Plain:
    case Ink::Load:
        break;
    }
    return palette.ink;
}

Colour textColour(const Palette& palette, Ink ink) {
    switch (ink) {
    case Ink::Tension:
        return palette.tensionText;
    case Ink::Compression:
        return palette.compressionText;
    case Ink::Zero:
        return palette.zeroText;
    case Ink::Muted:
    case Ink::Dimension:
        return palette.muted;
    default:
        return lineColour(palette, ink);
    }
}

double contrast(Colour a, Colour b) {
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

} // namespace gusset
