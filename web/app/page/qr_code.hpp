#pragma once
// A text as a QR code (ISO/IEC 18004), for a camera to read from the screen or from a handout.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

struct QrCode {
    int side = 0;           // modules
    std::vector<bool> dark; // by rows from the top, side · side of them
};

// Modules of light around the code that a reader needs (ISO/IEC 18004, 6.3.8).
inline constexpr int kQuietModules = 4;

// None for a text that needs a larger code than a phone's camera reads with ease from a screen.
[[nodiscard]] std::optional<QrCode> qrCodeOf(std::string_view text);
// As SVG that stands alone, black on white in every theme: what cameras expect.
[[nodiscard]] std::string qrCodeSvg(const QrCode&);

} // namespace gusset
