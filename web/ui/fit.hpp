#pragma once
// How what stands in a cell gets into it: a number whole, in a smaller face or written shorter, and
// columns as wide as their numbers where there is room. Widths in any one unit. No Dear ImGui.

#include <cstddef>
#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// Of a text in a face; faces go from the largest to the smallest that can still be read.
using WidthIn = std::function<double(std::size_t face, std::string_view text)>;

struct FittedNumber {
    std::string text;
    std::size_t face = 0;
    double shrunk = 1; // of the face's size: where nothing else helps it is smaller than can be
                       // read well, but whole
};
// Never loses a digit: what is too long in the smallest face is rounded, with fewer decimals or
// with a power of ten, and stays true in its size.
[[nodiscard]] FittedNumber fitNumber(std::string_view text, double room, std::size_t faces,
                                     const WidthIn&);
// Whether that text is one, as core/number writes them: "−24,75", "1.2e21".
[[nodiscard]] bool isNumberText(std::string_view text);

struct ColumnWish {
    double least = 0;
    double share = 0;      // of what is left over
    double need = 0;       // of what stands in it; 0: not known, it neither gives nor takes
    bool isNumber = false; // numbers come before words
};
// Each its least and its share; columns that have more than they need then give to those that lack.
[[nodiscard]] std::vector<double> columnWidths(std::span<const ColumnWish>, double room);

// Columns, by place, of each block of a table that is wider than its room: as many in a block as
// there is room for, the first one, which names the rows, in all.
[[nodiscard]] std::vector<std::vector<std::size_t>> columnBlocks(std::span<const float> widths,
                                                                 float room);

// In letters, not in bytes.
[[nodiscard]] std::size_t lettersIn(std::string_view text);
// Of a column of rows; figures have one width, so that the longest number is the widest.
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
