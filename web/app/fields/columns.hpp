#pragma once
// The columns of the model's tables. What a cell holds, how a text that was typed into it is read,
// what it is called on the page and by a screen reader: each stands once, here; cells, pasting, the
// notebook's tables and the page's own follow.

#include "app/state/field_id.hpp"
#include "core/outcome.hpp"
#include "model/edit/edit.hpp"
#include "model/truss/truss.hpp"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <variant>

namespace gusset {

namespace column { // their places: a saved order of rows is known by them
inline constexpr int kJointLabel = 0;
inline constexpr int kJointX = 1;
inline constexpr int kJointY = 2;
inline constexpr int kMemberEnds = 0;
inline constexpr int kSupportDirection = 1;
inline constexpr int kSupportSettle = 2;
inline constexpr int kSupportKind = 3;
inline constexpr int kLoadFirst = 1;  // F_x, or the size
inline constexpr int kLoadSecond = 2; // F_y, or the angle; of a chord load, per length
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
[[nodiscard]] std::string symbolOf(const Units&, ColumnUnit); // "" in plain numbers

// Words where there is no number, and none where there is nothing.
using CellValue = std::variant<std::string, double>;

struct NotebookLook {
    std::string_view heading{};
    double least = 60; // CSS px
    double share = 1;  // of the room that is left over
    bool namesUnit = true;
    bool orders = true;   // its heading, pressed, orders the rows
    bool atRight = false; // the heading, as over numbers
};
// Row: see Cell. The text of numbers has points.
using ReadCell = Outcome<Edit> (*)(const Truss&, int row, const std::string& text);
// Of a row that is there.
using WriteCell = CellValue (*)(const Truss&, std::size_t row);
using AskCell = bool (*)(const Truss&, std::size_t row);
struct ColumnMore {
    bool mayBeEmpty = false; // an empty text leaves it out of the model
    std::string_view hint{}; // in the empty row at the end, which begins with columns that have one
    std::string_view onPage{}; // its heading in the page's own tables, where that is not its name
    bool isOnPage = true;
    std::string_view picked{}; // its name in the inspector; none: it is not there
    AskCell canType = nullptr; // none: in every row that is there
};
struct CellColumn {
    std::string_view key;  // within the field's own
    std::string_view name; // for those who hear it: "x" of joint C
    CellForm form = CellForm::Words;
    ColumnUnit unit = ColumnUnit::None;
    NotebookLook notebook{};
    WriteCell write = nullptr;
    ReadCell read = nullptr; // none: it is not typed
    ColumnMore more{};
};

struct ModelTable {
    std::string_view one;    // "joint": what a row is
    std::string_view plural; // "Joints"
    std::string_view find;   // the hint of the field by which rows are found
    std::span<const CellColumn> columns;
    std::span<const int> inNotebook;     // the columns in the order in which the notebook has them
    int (*rows)(const Truss&) = nullptr; // without the new one
    Edit (*remove)(int row) = nullptr;
};
inline constexpr std::size_t kCellTables = 6;

[[nodiscard]] const ModelTable& modelTable(CellTable);
// Precondition: the table has such a column.
[[nodiscard]] const CellColumn& columnOf(const Cell&);

} // namespace gusset
