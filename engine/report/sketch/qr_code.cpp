#include "report/sketch/qr_code.hpp"

#include "phrases/results/sheet.hpp"
#include "report/text/html.hpp"
#include "report/text/phrases.hpp"

#include <qrcodegen.h>

#include <array>
#include <cstdint>

namespace gusset {
namespace {

// 117 modules a side, 1,273 bytes. In practice phones begin to fail on finer codes.
constexpr int kLargestVersion = 25;
constexpr int kPixelsOfModule = 6;

using Buffer = std::array<std::uint8_t, qrcodegen_BUFFER_LEN_FOR_VERSION(kLargestVersion)>;

} // namespace

// Level L, or a stronger one if it fits in the same size: a screen is neither torn nor stained, and
// larger modules help more.
std::optional<QrCode> qrCodeOf(std::string_view text) {
    Buffer work{};
    Buffer code{};
    const std::string ended(text);
    if (!qrcodegen_encodeText(ended.c_str(), work.data(), code.data(), qrcodegen_Ecc_LOW,
                              qrcodegen_VERSION_MIN, kLargestVersion, qrcodegen_Mask_AUTO, true)) {
        return std::nullopt;
    }
    QrCode result;
    result.side = qrcodegen_getSize(code.data());
    for (int y = 0; y < result.side; ++y) {
        for (int x = 0; x < result.side; ++x) {
            result.dark.push_back(qrcodegen_getModule(code.data(), x, y));
        }
    }
    return result;
}

std::string qrCodeSvg(const PhraseBook& book, const QrCode& code) {
    const int whole = code.side + 2 * kQuietModules;
    const std::string modules = std::to_string(whole);
    const std::string size = std::to_string(whole * kPixelsOfModule);
    std::string path;
    for (int y = 0; y < code.side; ++y) {
        for (int x = 0; x < code.side; ++x) {
            if (code.dark[static_cast<std::size_t>(y * code.side + x)]) {
                path += "M" + std::to_string(x + kQuietModules) + " " +
                        std::to_string(y + kQuietModules) + "h1v1h-1z";
            }
        }
    }
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + modules + " " + modules +
           "\" width=\"" + size + "\" height=\"" + size +
           "\" shape-rendering=\"crispEdges\" role=\"img\">\n<title>" +
           escapeHtml(sayPlain(book, phrase::kCodeOfTruss)) +
           "</title>\n"
           "<path d=\"M0 0h" +
           modules + "v" + modules + "H0z\" fill=\"#ffffff\"/>\n<path d=\"" + path +
           "\" fill=\"#000000\"/>\n</svg>\n";
}

} // namespace gusset
