#pragma once
// Which field is typed into, of all that the page has. The scripts of the page know a field by a
// text, which fields/field_key alone writes and reads.

#include "app/state/listing.hpp"
#include "core/ids.hpp"
#include "model/truss/check_settings.hpp"

#include <variant>

namespace gusset {

enum class CellTable { Joints, Members, Supports, Loads, Materials, Sections };
struct Cell { // of the model's tables as the notebook has them
    CellTable table = CellTable::Joints;
    int row = 0;    // of the vector in Truss; one past its end: the new row
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
enum class RowPress { Remove, ChangeKind }; // of a support: from pin to roller or back
struct PageRow {                            // a button of the page's own tables
    CellTable table = CellTable::Joints;
    int row = 0;
    RowPress press = RowPress::Remove;

    friend bool operator==(const PageRow&, const PageRow&) = default;
};

enum class TitleField { Header, Page };

// Combinations of load cases, and loads that move.
enum class ListFieldKind {
    CombinationName,
    Factor, // of a case in a combination; empty: the case has no part in it
    MovingName,
    AxleAt,       // length units behind the first axle
    AxleForce,    // force units, positive down, as axle loads are given
    SpreadForce,  // of a spread load, per unit of length, positive down; empty: none
    SpreadLength, // length units; empty: as long as is worst
};
struct ListField {
    ListFieldKind kind = ListFieldKind::CombinationName;
    int row = 0;  // of the combination or the moving load; one past the end of combinations: new
    int part = 0; // of the case (see caseNames) or the axle; one past the end of axles: new

    friend bool operator==(const ListField&, const ListField&) = default;
};

struct CheckField { // a number by which members are checked
    double CheckSettings::*number = nullptr;

    friend bool operator==(const CheckField&, const CheckField&) = default;
};
struct SearchField { // what is looked for in a table of the notebook
    ListedTable table = ListedTable::Forces;

    friend bool operator==(const SearchField&, const SearchField&) = default;
};
enum class SeveralKind { Move, Copy, Turn, Repeat, Warm }; // done to all that is picked
enum class StarterSize { Span, Rise, Load };               // of a usual form to begin with
enum class LinkField { Open };                             // a link that is pasted

// On the board itself.
struct LoadField { // a load's force, beside its arrow
    LoadId load;

    friend bool operator==(const LoadField&, const LoadField&) = default;
};
// The distance between two levels of joints that a dimension line gives.
struct Measured {
    bool upright = false; // along y, else along x
    double from = 0;      // length units, from < to
    double to = 0;

    friend bool operator==(const Measured&, const Measured&) = default;
};
enum class MemberEndField { Drawing, Drawn }; // of the member in hand, of the one drawn last

using FieldId = std::variant<TitleField, Cell, PickedCell, PageCell, PageRow, ListField, CheckField,
                             SearchField, SeveralKind, StarterSize, LinkField, LoadField, Measured,
                             MemberEndField>;

} // namespace gusset
