#pragma once
// Which of the page's fields is being edited. The page's scripts identify a field by a text, which
// only fields/field_key writes and reads.

#include "app/state/table_view.hpp"
#include "core/ids.hpp"
#include "model/truss/check_settings.hpp"

#include <variant>

namespace gusset {

enum class CellTable { Joints, Members, Supports, Loads, Materials, Sections };
struct Cell { // of the model's tables in the notebook
    CellTable table = CellTable::Joints;
    int row = 0;    // index into the vector in Truss; one past the end: the new row
    int column = 0; // of modelTable (fields/columns)

    friend bool operator==(const Cell&, const Cell&) = default;
};
struct PickedCell { // the same cell in the inspector
    Cell cell;

    friend bool operator==(const PickedCell&, const PickedCell&) = default;
};
struct PageCell { // the same cell in the page's own tables
    Cell cell;

    friend bool operator==(const PageCell&, const PageCell&) = default;
};
enum class RowPress { Remove, ChangeKind }; // ChangeKind: of a support, pin to roller or back
struct PageRow {                            // a button of the page's own tables
    CellTable table = CellTable::Joints;
    int row = 0;
    RowPress press = RowPress::Remove;

    friend bool operator==(const PageRow&, const PageRow&) = default;
};

// Controls of the page's own tables, besides their cells and rows.
enum class PagePress {
    Undo,
    Redo,
    ShowPart, // row: a PagePart (state.hpp)
    RemoveCombination,
    CopyCase,
    RemoveCase,
    RemoveMoving,
    RemoveAxle,
    AddMoving, // text: the joints of its path, by their numbers
    ChoosePath // text: the kind of path, and the name of a moving load
};
struct PageControl {
    PagePress press = PagePress::Undo;
    int row = 0;
    int part = 0;

    friend bool operator==(const PageControl&, const PageControl&) = default;
};
struct PageAnswer { // text: the number of the answer
    int row = 0;    // of the question (fields/questions)

    friend bool operator==(const PageAnswer&, const PageAnswer&) = default;
};
enum class PageList { Cut, Path }; // names of members or joints, one after the other

enum class TitleField { Header, Page };

// Load cases, combinations and moving loads.
enum class ListFieldKind {
    CombinationName,
    Factor, // of a case in a combination; empty: the case is not in it
    MovingName,
    AxleAt,       // length units behind the first axle
    AxleForce,    // force units, positive down, as axle loads are given
    SpreadForce,  // of a spread load, per unit length, positive down; empty: none
    SpreadLength, // length units; empty: the worst length
    CaseName,
    CaseKind, // what it stands for: a word of design/loading/actions, or empty
};
struct ListField {
    ListFieldKind kind = ListFieldKind::CombinationName;
    int row =
        0; // of the case, combination or moving load; one past the last combination: a new one
    int part = 0; // of the case (see caseNames) or axle; one past the last axle: a new one

    friend bool operator==(const ListField&, const ListField&) = default;
};

struct CheckField { // a setting of the member checks
    double CheckSettings::*number = nullptr;

    friend bool operator==(const CheckField&, const CheckField&) = default;
};
enum class FactorField {
    In,
    Out
};                   // K of the picked members, in the plane of the truss or out of it
struct SearchField { // the text searched for in a table of the notebook
    SortedTable table = SortedTable::Forces;

    friend bool operator==(const SearchField&, const SearchField&) = default;
};
enum class SeveralKind { Move, Copy, Turn, Repeat, Warm }; // applies to everything selected

// On the board itself.
struct LoadField { // the force of a load, beside its arrow
    LoadId load;

    friend bool operator==(const LoadField&, const LoadField&) = default;
};
// The distance between two levels of joints, as a dimension line shows it.
struct Measured {
    bool upright = false; // along y, else along x
    double from = 0;      // length units, from < to
    double to = 0;

    friend bool operator==(const Measured&, const Measured&) = default;
};
enum class MemberEndField { Drawing, Drawn }; // of the member being drawn, of the one drawn last

using FieldId = std::variant<TitleField, Cell, PickedCell, PageCell, PageRow, PageControl,
                             PageAnswer, PageList, ListField, CheckField, FactorField, SearchField,
                             SeveralKind, LoadField, Measured, MemberEndField>;

} // namespace gusset
