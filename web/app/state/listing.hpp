#pragma once
// A table as its reader wants it: ordered by one of its columns, and only the rows that name what
// is looked for. A way of looking: neither the model nor the results change.

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

enum class ListedTable {
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
inline constexpr std::size_t kListedTables = 13;

struct Listing {
    std::optional<int> column{}; // that orders; none: as drawn
    bool falling = false;        // else rising
    std::string words{};         // rows that don't hold them are left out; empty: all rows

    friend bool operator==(const Listing&, const Listing&) = default;
};

// What a cell is ordered by: its number, or its words where it has none.
struct SortKey {
    std::optional<double> number{};
    std::string words{};
};

struct ListedRows {
    int count = 0;
    std::vector<int> named{}; // the columns in which words are looked for
    std::function<SortKey(int row, int column)> key{};
    std::function<bool(int row)> wanted{}; // none: every row
    std::optional<int> kept{};             // stays whatever is looked for: it is being typed in
};

// Row numbers in the order of showing. Rows that are alike stay as drawn; cells with nothing in
// them come last either way.
[[nodiscard]] std::vector<int> listed(const Listing&, const ListedRows&);
// Its heading was pressed: one way, then the other, then as drawn again.
[[nodiscard]] Listing withHeadingPressed(Listing, int column, bool fallsFirst);
// Figures within words count as numbers: J2 stands before J10.
[[nodiscard]] bool namesBefore(std::string_view, std::string_view);
// Capitals of the Latin alphabet, blanks and dashes don't matter: "a-b" finds AB and A–B.
[[nodiscard]] bool holdsWords(std::string_view text, std::string_view words);

} // namespace gusset
