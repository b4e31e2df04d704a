#pragma once
// A table as its reader wants it: sorted by one of its columns, and only the rows whose names match
// a search. It is only a view: neither the model nor the results change.

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

enum class SortedTable {
    Forces,
    Reactions,
    Displacements,
    Stretches,
    Envelope,
    UnderMoving,
    Ordinates,
    Joints,
    Members,
    Supports,
    Loads,
    Materials,
    Sections
};
inline constexpr std::size_t kSortedTables = 13;

struct TableView {
    std::optional<int> column{}; // to sort by; none: as drawn
    bool falling = false;        // descending; else ascending
    std::string words{};         // rows without them are left out; empty: all rows

    friend bool operator==(const TableView&, const TableView&) = default;
};

// What a cell is sorted by: its number, or its words if it has none.
struct SortKey {
    std::optional<double> number{};
    std::string words{};
};

struct OrderedRows {
    int count = 0;
    std::vector<int> named{}; // the columns that are searched
    std::function<SortKey(int row, int column)> key{};
    std::function<bool(int row)> wanted{}; // none: every row
    std::optional<int> kept{};             // stays whatever the search: it is being edited
};

// Row indices in the order shown. Equal rows stay as drawn; empty cells come last in either
// direction.
[[nodiscard]] std::vector<int> listed(const TableView&, const OrderedRows&);
// After a press on its heading: one direction, then the other, then as drawn again.
[[nodiscard]] TableView withHeadingPressed(TableView, int column, bool fallsFirst);
// Digits within words count as numbers: J2 comes before J10.
[[nodiscard]] bool namesBefore(std::string_view, std::string_view);
// Ignores the case of Latin letters, blanks and dashes: "a-b" finds AB and A–B.
[[nodiscard]] bool holdsWords(std::string_view text, std::string_view words);

} // namespace gusset
