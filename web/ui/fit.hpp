#pragma once
// How contents are fitted into a cell: a number whole, in a smaller face or in a shorter form, and
// columns as wide as their numbers if there is room. Widths in any one unit. No Dear ImGui.

#include <algorithm>
#include <cstddef>
#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// The width of a text in a face; faces are ordered from the largest to the smallest that is
// legible.
using WidthIn = std::function<double(std::size_t face, std::string_view text)>;

struct FittedNumber {
    std::string text;
    std::size_t face = 0;
    double shrunk = 1; // of the face's size: below 1 as a last resort, hardly legible
};
// Never truncates a number: one too long for the smallest face is rounded, with fewer decimals or
// with a power of ten, and keeps its magnitude.
[[nodiscard]] FittedNumber fitNumber(std::string_view text, double room, std::size_t faces,
                                     const WidthIn&);
// Whether the text is a number as core/number writes it: "−24,75", "1.2e21".
[[nodiscard]] bool isNumberText(std::string_view text);

// The figures after the decimal sign; 0 for what has none, and for a power of ten.
[[nodiscard]] int decimalsIn(std::string_view text);
inline constexpr int kMostAligned = 6; // more decimals would push the other numbers too far left
// The most decimals in a column.
template <class Row>
[[nodiscard]] int decimalsOf(const std::vector<Row>& rows, std::string Row::*text) {
    int most = 0;
    for (const Row& row : rows) {
        most = std::max(most, decimalsIn(row.*text));
    }
    return std::min(most, kMostAligned);
}

struct ColumnWish {
    double least = 0;
    double share = 0;      // of the space left over
    double need = 0;       // the width of its contents; 0: unknown, so it neither gives nor takes
    bool isNumber = false; // numbers take precedence over words
};
// Each gets its minimum and its share; then columns with room to spare give to those that are too
// narrow.
[[nodiscard]] std::vector<double> columnWidths(std::span<const ColumnWish>, double room);

// Splits a table that is wider than its room into blocks, each a list of column indices: as many
// columns per block as fit, with the first column, which names the rows, in every block.
[[nodiscard]] std::vector<std::vector<std::size_t>> columnBlocks(std::span<const float> widths,
                                                                 float room);

// In letters, not in bytes.
[[nodiscard]] std::size_t lettersIn(std::string_view text);
// The longest text of a column; digits have equal width, so the longest number is also the widest.
template <class Row>
[[nodiscard]] std::string_view longestOf(const std::vector<Row>& rows, std::string Row::*text) {
    std::string_view longest;
    std::size_t most = 0;
    for (const Row& row : rows) {
        const std::string& each = row.*text;
        if (each.size() > most && lettersIn(each) > most) {
            longest = each;
            most = lettersIn(each);
        }
    }
    return longest;
}

} // namespace gusset
