#include "report/sketch/qr_code.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;

namespace {

bool isDark(const QrCode& code, int x, int y) {
    return code.dark[static_cast<std::size_t>(y * code.side + x)];
}

} // namespace

// That a reader reads what was written is tested in the browser, from the screen
// (tests/browser/sharing.test.mjs).
TEST_CASE("A QR code has the three finder patterns of ISO/IEC 18004 in its corners") {
    const std::optional<QrCode> code = qrCodeOf("https://example.org/#m=1.abc.3.xyz12");
    REQUIRE(code);
    REQUIRE(code->dark.size() == static_cast<std::size_t>(code->side * code->side));
    const int far = code->side - 7;
    for (const auto& [left, top] : {std::pair{0, 0}, std::pair{far, 0}, std::pair{0, far}}) {
        for (int i = 0; i < 7; ++i) { // rings: dark outside, light, dark 3 by 3 in the middle
            CHECK(isDark(*code, left + i, top));
            CHECK(isDark(*code, left, top + i));
            CHECK(isDark(*code, left + 3, top + 3));
        }
        for (int i = 1; i < 6; ++i) {
            CHECK(!isDark(*code, left + i, top + 1));
        }
    }
}

// ISO/IEC 18004, table 7: version 25 at level L holds 1,273 bytes.
TEST_CASE("A text of 1,273 bytes has a code, and one that is longer has none") {
    const std::optional<QrCode> longest = qrCodeOf(std::string(1273, 'a'));
    REQUIRE(longest);
    CHECK(longest->side == 17 + 4 * 25);
    CHECK_FALSE(qrCodeOf(std::string(1274, 'a')));
    CHECK_FALSE(qrCodeOf(std::string(100000, 'a')));
}

TEST_CASE("A code as a drawing has room around it, and a square a dark module") {
    const std::optional<QrCode> code = qrCodeOf("truss");
    REQUIRE(code);
    const std::string svg = qrCodeSvg(englishPhrases(), *code);
    std::size_t squares = 0;
    for (std::size_t at = svg.find("h1v1h-1z"); at != std::string::npos;
         at = svg.find("h1v1h-1z", at + 1)) {
        ++squares;
    }
    std::size_t dark = 0;
    for (const bool module : code->dark) {
        dark += module ? 1 : 0;
    }
    CHECK(squares == dark);
    CHECK(svg.find("M4 4h1") != std::string::npos); // the corner, inside a margin of four modules
    CHECK(svg.find("M3 ") == std::string::npos);
}
