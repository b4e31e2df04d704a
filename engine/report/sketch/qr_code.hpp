#pragma once
// A text as a QR code (ISO/IEC 18004), for a camera to read from the screen or from a handout.

#include "core/phrase.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

struct QrCode {
    int side = 0;           // modules
    std::vector<bool> dark; // row by row from the top, side · side of them
};

// Width in modules of the light margin that a reader needs around the code (ISO/IEC 18004, 6.3.8).
inline constexpr int kQuietModules = 4;

// None for a text that needs a code larger than a phone's camera reads easily from a screen.
[[nodiscard]] std::optional<QrCode> qrCodeOf(std::string_view text);
// As a standalone SVG, black on white in every theme, as cameras expect.
[[nodiscard]] std::string qrCodeSvg(const PhraseBook&, const QrCode&);

} // namespace gusset
