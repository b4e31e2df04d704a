#pragma once
// The model's tables as cells that can be typed into: what a cell holds, what edit a typed text
// asks for, and where the keyboard goes next. The last row of each table is empty and makes a new
// thing. A field's key names its cell: "joint.3.x"; the notebook, the page's own tables and paste
// use the same.

#include "app/fields/field.hpp"
#include "app/state/action.hpp"
#include "core/outcome.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

enum class CellTable { Joints, Members, Supports, Loads, Materials, Sections };
namespace column { // of the tables
inline constexpr int kJointLabel = 0;
inline constexpr int kJointX = 1;
inline constexpr int kJointY = 2;
inline constexpr int kMemberEnds = 0;
inline constexpr int kMemberSection = 1; // the section's id
inline constexpr int kMemberWarming = 2;
inline constexpr int kMemberMisfit = 3;
inline constexpr int kSupportJoint = 0;
inline constexpr int kSupportDirection = 1; // of a roller; a pin has none
inline constexpr int kSupportSettle = 2;    // "0, -5" of a pin, "-5" along a roller's reaction
inline constexpr int kLoadJoint = 0;
inline constexpr int kLoadFirst = 1;  // F_x, or the size
inline constexpr int kLoadSecond = 2; // F_y, or the angle; of a chord load, per length
inline constexpr int kLoadCase = 3;
inline constexpr int kMaterialId = 0;
inline constexpr int kMaterialE = 1;
inline constexpr int kMaterialStrength = 2;
inline constexpr int kMaterialDensity = 3;
inline constexpr int kMaterialAlpha = 4; // millionths per K
inline constexpr int kSectionId = 0;
inline constexpr int kSectionMaterial = 1;
inline constexpr int kSectionMake = 2; // "rhs 100×60×4", or "A 1200, r 25"
} // namespace column

struct Cell {
    CellTable table = CellTable::Joints;
    int row = 0; // of the vector in Truss; one past its end: the new row
    int column = 0;

    friend bool operator==(const Cell&, const Cell&) = default;
};

// The rows of a table as they are shown, the new one last.
using RowOrder = std::vector<int>;
[[nodiscard]] RowOrder asDrawn(const Truss&, CellTable);

inline constexpr const char* kTitleKey = "title"; // the one field that stands in no table

[[nodiscard]] int rowsOf(const Truss&, CellTable); // without the new row
[[nodiscard]] int columnsOf(CellTable);
[[nodiscard]] std::string keyOf(const Cell&);
[[nodiscard]] std::optional<Cell> cellOf(const std::string& key);
// A new joint begins with its place (its label comes by itself), any other new row with its first
// cell. The direction of a pin can't be typed; of loads that are not on one joint only the case.
[[nodiscard]] bool canType(const Truss&, const Cell&);
[[nodiscard]] bool isNumber(const Cell&);                                  // words otherwise
[[nodiscard]] std::optional<double> cellNumber(const Truss&, const Cell&); // if one stands there

// What stands in the field when typing begins: numbers that read back the same.
[[nodiscard]] std::string cellText(const Truss&, const Cell&);
// The same to look at: a true minus sign, six figures.
[[nodiscard]] std::string cellLook(const Truss&, const Cell&);
// Fails with a sentence when the text can't be read. Whether the edit can be done is for apply.
[[nodiscard]] Outcome<Edit> cellEdit(const Truss&, const Cell&, const std::string& text);
// By Tab, Shift-Tab and Enter, along the rows as they are shown; nothing at the ends of a table.
// Rows made since the order was taken stand behind it.
[[nodiscard]] std::optional<Cell> cellAfter(const Truss&, const Cell&, FieldEnd, RowOrder);

// The text of a cell or of the title came back: commits its edit or says why not, ends the field,
// and begins the next one. False when the key is none of these.
enum class TypedIn { Notebook, Page }; // the page's own tables have all rows, as drawn
bool finishCell(const AppState&, const FieldDone&, Actions&, TypedIn where = TypedIn::Notebook);

} // namespace gusset
