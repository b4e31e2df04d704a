#pragma once
// The columns of the model's tables. What a cell holds, how typed text is read, and what the cell
// is called on the page and by a screen reader are each defined once, here, for cells, pasting, the
// notebook's tables and the page's own.

#include "app/state/field_id.hpp"
#include "core/outcome.hpp"
#include "core/phrase.hpp"
#include "model/edit/edit.hpp"
#include "model/truss/truss.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>

namespace gusset {

namespace column { // their positions: a saved row order refers to them
inline constexpr int kJointLabel = 0;
inline constexpr int kJointX = 1;
inline constexpr int kJointY = 2;
inline constexpr int kMemberEnds = 0;
inline constexpr int kSupportDirection = 1;
inline constexpr int kSupportSettle = 2;
inline constexpr int kSupportKind = 3;
inline constexpr int kLoadFirst = 1;  // the size, or the part along x
inline constexpr int kLoadSecond = 2; // the direction, or the part along y
inline constexpr int kLoadCase = 3;
inline constexpr int kMaterialAlpha = 4;
inline constexpr int kSectionMake = 2;
inline constexpr int kSectionArea = 3;
} // namespace column

enum class CellForm {
    Words,
    Number,
    Numbers, // several: "0, -5", or with words, "A 1200, r 25"
};
enum class ColumnUnit {
    None,
    Length,
    Displacement,
    Force,
    Stress,
    Area, // of sections
    Degrees,
    Kelvin,
    KilogramsPerCubicMetre,
    MillionthsPerKelvin,
};
[[nodiscard]] std::string symbolOf(const Units&, ColumnUnit); // "" when the model has no units

// Words if there is no number; an empty string if there is nothing.
using CellValue = std::variant<std::string, double>;

struct NotebookLook {
    Phrase<> heading{};
    double least = 60; // CSS px
    double share = 1;  // of the space left over
    bool namesUnit = true;
    bool orders = true;   // pressing its heading sorts the rows
    bool atRight = false; // the heading, as above numbers
};
// Row: see Cell. Numbers in the text have decimal points.
using ReadCell = Outcome<Edit> (*)(const Truss&, int row, const std::string& text);
// Only for existing rows.
using WriteCell = CellValue (*)(const Truss&, std::size_t row);
using LookCell = std::string (*)(const Truss&, std::size_t row);
using AskCell = bool (*)(const Truss&, std::size_t row);
struct ColumnMore {
    bool mayBeEmpty = false; // an empty text leaves it out of the model
    // In the empty last row, which starts with the columns that have one.
    std::optional<Phrase<>> hint{};
    std::optional<Phrase<>> onPage{}; // its heading in the page's own tables, if not its name
    bool isOnPage = true;
    std::optional<Phrase<>> picked{}; // its name in the inspector; none: not shown there
    AskCell canType = nullptr;        // null: in every existing row
    LookCell look = nullptr;          // null: as the value is written
};
struct CellColumn {
    std::string_view key; // within the key of the field
    Phrase<> name;        // for screen readers: "x" of joint C
    CellForm form = CellForm::Words;
    ColumnUnit unit = ColumnUnit::None;
    NotebookLook notebook{};
    WriteCell write = nullptr;
    ReadCell read = nullptr; // null: it can't be edited
    ColumnMore more{};
};

struct ModelTable {
    std::string_view key;          // of its rows, within the key of a field
    Phrase<> name;                 // "Joints"
    decltype("{name}"_phrase) row; // what one row is called: "joint C"
    Phrase<> newRow;               // "a new joint"
    Phrase<> find;                 // the hint of the search field
    std::span<const CellColumn> columns;
    std::span<const int> inNotebook;     // the columns in the notebook's order
    int (*rows)(const Truss&) = nullptr; // without the new row
    Edit (*remove)(int row) = nullptr;
};
inline constexpr std::size_t kCellTables = 6;

[[nodiscard]] const ModelTable& modelTable(CellTable);
// Precondition: the table has this column.
[[nodiscard]] const CellColumn& columnOf(const Cell&);

} // namespace gusset
