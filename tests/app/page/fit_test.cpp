// Contents too wide for their cell: numbers stay whole or correctly rounded, columns give room to
// those that need it, and tables break into blocks.
#include "ui/fit.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cstdlib>
#include <numeric>
#include <string>

using namespace gusset;

namespace {

// Monospaced letters, 10, 8 and 6 wide in the three faces.
double inFace(std::size_t face, std::string_view text) {
    return (10.0 - 2 * static_cast<double>(face)) * static_cast<double>(lettersIn(text));
}

FittedNumber fitted(std::string_view text, double room) { return fitNumber(text, room, 3, inFace); }

double widthOf(const FittedNumber& number) {
    return inFace(number.face, number.text) * number.shrunk;
}

double sumOf(const std::vector<double>& widths) {
    return std::accumulate(widths.begin(), widths.end(), 0.0);
}

} // namespace

TEST_CASE("a number goes into a cell whole, in the largest face that has room for it") {
    CHECK(fitted("36000.00", 80).face == 0);
    CHECK(fitted("36000.00", 79).face == 1);
    CHECK(fitted("36000.00", 63).face == 2);
    for (const double room : {80.0, 64.0, 48.0}) {
        CHECK(fitted("36000.00", room).text == "36000.00");
    }
}

TEST_CASE("a number that no face has room for is rounded, and stays true in its size") {
    CHECK(fitted("123456.78", 6 * 6).text == "123457");
    CHECK(fitted("\u22121234567.89", 8 * 6).text == "\u22121234568");
    CHECK(fitted("\u22121234567.89", 7 * 6).text == "\u22121.23e6");
    CHECK(fitted("720000.00", 5 * 6).text == "7.2e5");
    CHECK(fitted("36000,00", 5 * 6).text == "36000");
    CHECK(fitted("98765432,1", 6 * 6).text == "9,88e7");
    CHECK(fitted("0.000012345", 7 * 6).text == "1.23e-5");
}

TEST_CASE("a number is never wider than its cell, nor off by more than its figures say") {
    for (const char* text : {"36000.00", "720000.00", "-8.125e-300", "123456789", "0.0004567"}) {
        for (double room = 4; room <= 100; ++room) {
            const FittedNumber number = fitted(text, room);
            INFO(text << " in " << room << ": " << number.text);
            CHECK(widthOf(number) <= room * (1 + 1e-12));
            std::string ascii = number.text;
            if (ascii.starts_with("\u2212")) {
                ascii.replace(0, 3, "-");
            }
            const double value = std::strtod(text, nullptr);
            const double shown = std::strtod(ascii.c_str(), nullptr);
            CHECK(std::abs(shown - value) <= 0.005 * std::abs(value)); // three significant figures
        }
    }
}

TEST_CASE("what is a number is told from words") {
    for (const char* text : {"0", "36000.00", "\u221224,75", "1.2e21", "2e-7"}) {
        CHECK(isNumberText(text));
    }
    for (const char* text : {"", "\u2212", "25\u221a5/2", "5 @ 30\u00b0", "1.2.3", "T", "1e"}) {
        CHECK_FALSE(isNumberText(text));
    }
}

TEST_CASE("columns with room to spare give it to numbers that lack it, then to words") {
    // 100 each: a name that needs 40, a number that needs 130, words that need 120.
    const std::vector<ColumnWish> wishes{
        {100, 0, 40, false}, {100, 0, 130, true}, {100, 0, 120, false}};
    CHECK(columnWidths(wishes, 300) == std::vector<double>{50, 130, 120});
    const std::vector<ColumnWish> tight{
        {100, 0, 60, false}, {100, 0, 130, true}, {100, 0, 120, false}};
    CHECK(columnWidths(tight, 300) == std::vector<double>{60, 130, 110});
    // The contents of the others are not known: they keep their width.
    const std::vector<ColumnWish> unknown{{100, 1}, {100, 1, 130, true}};
    CHECK(columnWidths(unknown, 220) == std::vector<double>{110, 110});
    CHECK(sumOf(columnWidths(wishes, 330)) == 300); // no shares: the rest is not distributed
}

TEST_CASE("a table wider than its room stands in blocks that all begin with the rows' names") {
    using Blocks = std::vector<std::vector<std::size_t>>;
    const std::vector<float> widths{50, 60, 70, 80, 90};
    CHECK(columnBlocks(widths, 350) == Blocks{{0, 1, 2, 3, 4}});
    CHECK(columnBlocks(widths, 349) == Blocks{{0, 1, 2, 3}, {0, 4}});
    CHECK(columnBlocks(widths, 200) == Blocks{{0, 1, 2}, {0, 3}, {0, 4}});
    CHECK(columnBlocks(widths, 10) == Blocks{{0, 1}, {0, 2}, {0, 3}, {0, 4}});
}
