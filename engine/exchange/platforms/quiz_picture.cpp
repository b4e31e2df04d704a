#include "exchange/platforms/quiz_picture.hpp"

namespace gusset {

namespace {

// PNG (ISO/IEC 15948), 5.2 and 11.2.2: the signature, then the header's length and name, then the
// width and the height, four bytes each, the highest first.
constexpr std::string_view kSignature = "\x89PNG\r\n\x1A\n";
constexpr std::size_t kWidthAt = 16;
constexpr std::size_t kHeightAt = 20;
constexpr std::size_t kHead = 24;

std::size_t pngNumber(std::string_view png, std::size_t at) {
    std::size_t value = 0;
    for (std::size_t i = at; i < at + 4; ++i) {
        value = value << 8 | static_cast<unsigned char>(png[i]);
    }
    return value;
}

} // namespace

bool isPng(std::string_view bytes) {
    return bytes.size() >= kHead && bytes.starts_with(kSignature) &&
           pngNumber(bytes, kWidthAt) != 0 && pngNumber(bytes, kHeightAt) != 0;
}

void usePng(QuizPicture& picture, const std::string& png) {
    picture.png = png;
    picture.height = static_cast<int>(static_cast<double>(picture.width) *
                                      static_cast<double>(pngNumber(png, kHeightAt)) /
                                      static_cast<double>(pngNumber(png, kWidthAt)));
}

} // namespace gusset
