#include "app/fields/cells.hpp"

#include "app/fields/cell_list.hpp"
#include "app/fields/cell_readers.hpp"
#include "app/fields/paste.hpp"
#include "app/fields/property_cells.hpp"
#include "app/fields/typed_text.hpp"
#include "app/state/commit.hpp"
#include "report/results/results_text.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <numeric>
#include <string_view>

namespace gusset {
namespace {

using ColumnNames = std::array<std::string_view, 5>;
struct TableNames {
    std::string_view table;
    ColumnNames columns;
    int count = 0;
};
constexpr std::array<TableNames, 6> kTableNames{{
    {"joint", {"label", "x", "y"}, 3},
    {"member", {"ends", "section", "warming", "misfit"}, 4},
    {"support", {"joint", "direction", "settle"}, 3},
    {"load", {"joint", "first", "second", "case"}, 4},
    {"material", {"id", "E", "strength", "density", "alpha"}, 5},
    {"section", {"id", "material", "make"}, 3},
}};

const TableNames& namesOf(CellTable table) { return kTableNames[static_cast<std::size_t>(table)]; }

bool isCase(const Cell& cell) {
    return cell.table == CellTable::Loads && cell.column == column::kLoadCase;
}

std::optional<double> loadNumber(const Load& load, int column) {
    if (const auto* force = std::get_if<JointForce>(&load.what)) {
        return column == column::kLoadFirst ? force->fx : force->fy;
    }
    if (const auto* force = std::get_if<AngledForce>(&load.what)) {
        return column == column::kLoadFirst ? force->size : force->angle;
    }
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        return column == column::kLoadSecond ? std::optional(chord->perLength) : std::nullopt;
    }
    return std::nullopt;
}

} // namespace

std::optional<double> cellNumber(const Truss& truss, const Cell& cell) {
    const auto row = static_cast<std::size_t>(cell.row);
    if (cell.row >= rowsOf(truss, cell.table) || !isNumber(cell)) {
        return std::nullopt;
    }
    switch (cell.table) {
    case CellTable::Joints:
        return cell.column == column::kJointX ? truss.joints[row].at.x : truss.joints[row].at.y;
    case CellTable::Supports:
        return truss.supports[row].kind == SupportKind::Roller
                   ? std::optional(truss.supports[row].reaction)
                   : std::nullopt;
    case CellTable::Loads:
        return loadNumber(truss.loads[row], cell.column);
    case CellTable::Members:
        return memberNumber(truss.members[row], cell.column);
    case CellTable::Materials:
        return materialNumber(truss.materials[row], cell.column);
    case CellTable::Sections:
        break;
    }
    return std::nullopt;
}

namespace {

std::string labelOf(const Truss& truss, JointId joint) {
    return joint.valid() ? truss.joints[joint.at()].label : "";
}

std::string caseOf(const Load& load) { return load.caseId.empty() ? kDefaultCase : load.caseId; }

// The words of a cell that holds no number.
std::string wordsIn(const Truss& truss, const Cell& cell) {
    const auto row = static_cast<std::size_t>(cell.row);
    if (cell.row >= rowsOf(truss, cell.table) || isNumber(cell)) {
        return "";
    }
    switch (cell.table) {
    case CellTable::Joints:
        return truss.joints[row].label;
    case CellTable::Members:
        return cell.column == column::kMemberSection ? truss.members[row].section
                                                     : labelOf(truss, truss.members[row].a) + "–" +
                                                           labelOf(truss, truss.members[row].b);
    case CellTable::Supports:
        return cell.column == column::kSupportSettle ? settleText(truss.supports[row])
                                                     : labelOf(truss, truss.supports[row].joint);
    case CellTable::Loads:
        return isCase(cell) ? caseOf(truss.loads[row]) : labelOf(truss, jointOf(truss.loads[row]));
    case CellTable::Materials:
        return truss.materials[row].id;
    case CellTable::Sections:
        return cell.column == column::kSectionId         ? truss.sections[row].id
               : cell.column == column::kSectionMaterial ? truss.sections[row].material
                                                         : makeText(truss.sections[row]);
    }
    return "";
}

// What may be left out of the model is cleared by an empty text.
bool mayBeEmpty(const Truss& truss, const Cell& cell) {
    if (cell.row >= rowsOf(truss, cell.table)) {
        return false;
    }
    switch (cell.table) {
    case CellTable::Members:
    case CellTable::Materials:
        return cell.column > 0;
    case CellTable::Supports:
        return cell.column == column::kSupportSettle;
    case CellTable::Sections:
        return cell.column == column::kSectionMaterial;
    case CellTable::Joints:
    case CellTable::Loads:
        break;
    }
    return false;
}

void begin(const Truss& truss, const Cell& cell, Actions& actions) {
    actions.push_back(BeginField{keyOf(cell), cellText(truss, cell)});
}

Truss commitRows(const AppState& state, const Cell& cell, const std::string& text,
                 const RowOrder& order, Actions& actions) {
    const Outcome<Truss> after = pasteRows(state.truss, cell, text, order);
    if (!after) {
        actions.push_back(Say{MessageKind::Problem, after.issues().front().says});
        return state.truss;
    }
    actions.push_back(Commit{ReplaceTruss{after.value(), "Paste rows"}});
    return after.value();
}

// Carries out what was typed; gives back the model as it will be.
Truss commitCell(const AppState& state, const Cell& cell, const FieldDone& done,
                 const RowOrder& order, Actions& actions) {
    if ((done.text.empty() && !mayBeEmpty(state.truss, cell)) ||
        done.text == cellText(state.truss, cell)) {
        return state.truss;
    }
    if (looksLikeRows(done.text)) {
        return commitRows(state, cell, done.text, order, actions);
    }
    const Outcome<Edit> edit = cellEdit(state.truss, cell, done.text);
    if (!commitOrSay(edit, actions)) {
        return state.truss;
    }
    const Outcome<Truss> after = gusset::apply(state.truss, edit.value());
    return after ? after.value() : state.truss;
}

} // namespace

int rowsOf(const Truss& truss, CellTable table) {
    switch (table) {
    case CellTable::Joints:
        return static_cast<int>(truss.joints.size());
    case CellTable::Members:
        return static_cast<int>(truss.members.size());
    case CellTable::Supports:
        return static_cast<int>(truss.supports.size());
    case CellTable::Loads:
        return static_cast<int>(truss.loads.size());
    case CellTable::Materials:
        return static_cast<int>(truss.materials.size());
    case CellTable::Sections:
        return static_cast<int>(truss.sections.size());
    }
    return 0;
}

int columnsOf(CellTable table) { return namesOf(table).count; }

std::string keyOf(const Cell& cell) {
    const TableNames& names = namesOf(cell.table);
    return std::string(names.table) + "." + std::to_string(cell.row) + "." +
           std::string(names.columns[static_cast<std::size_t>(cell.column)]);
}

std::optional<Cell> cellOf(const std::string& key) {
    const std::string_view whole(key);
    const std::size_t first = whole.find('.');
    const std::size_t last = whole.rfind('.');
    if (first == std::string_view::npos || last == first) {
        return std::nullopt;
    }
    for (std::size_t table = 0; table < kTableNames.size(); ++table) {
        for (int i = 0; i < kTableNames[table].count; ++i) {
            if (whole.substr(0, first) == kTableNames[table].table &&
                whole.substr(last + 1) == kTableNames[table].columns[static_cast<std::size_t>(i)]) {
                return Cell{static_cast<CellTable>(table), std::atoi(key.c_str() + first + 1), i};
            }
        }
    }
    return std::nullopt;
}

bool canType(const Truss& truss, const Cell& cell) {
    const int rows = rowsOf(truss, cell.table);
    if (cell.row < 0 || cell.row > rows || cell.column >= columnsOf(cell.table)) {
        return false;
    }
    if (cell.row == rows) {
        return (cell.column == 0) != (cell.table == CellTable::Joints);
    }
    const auto row = static_cast<std::size_t>(cell.row);
    if (cell.table == CellTable::Loads) {
        return isCase(cell) || jointOf(truss.loads[row]).valid() ||
               cellNumber(truss, cell).has_value();
    }
    const bool ofRoller =
        cell.table == CellTable::Supports && cell.column == column::kSupportDirection;
    return !ofRoller || truss.supports[row].kind == SupportKind::Roller;
}

bool isNumber(const Cell& cell) {
    switch (cell.table) {
    case CellTable::Loads:
        return cell.column > 0 && !isCase(cell);
    case CellTable::Joints:
    case CellTable::Materials:
        return cell.column > 0;
    case CellTable::Members:
        return cell.column >= column::kMemberWarming;
    case CellTable::Supports:
        return cell.column == column::kSupportDirection;
    case CellTable::Sections:
        break;
    }
    return false;
}

namespace {

// Several numbers in one cell: "0, -5" or "A 1200, r 25".
bool holdsFigures(const Cell& cell) {
    return (cell.table == CellTable::Supports && cell.column == column::kSupportSettle) ||
           (cell.table == CellTable::Sections && cell.column == column::kSectionMake);
}

} // namespace

std::string cellText(const Truss& truss, const Cell& cell) {
    if (const std::optional<double> number = cellNumber(truss, cell)) {
        return typedNumber(truss, *number);
    }
    const std::string words = wordsIn(truss, cell);
    return holdsFigures(cell) ? typedNumbers(truss, words) : words;
}

std::string cellLook(const Truss& truss, const Cell& cell) {
    const std::optional<double> number = cellNumber(truss, cell);
    return number ? formatNumber(*number, typedStyleOf(truss)) : cellText(truss, cell);
}

Outcome<Edit> cellEdit(const Truss& truss, const Cell& cell, const std::string& typed) {
    const bool figures = isNumber(cell) || holdsFigures(cell);
    const std::string text = figures ? withPoints(truss, typed) : typed;
    switch (cell.table) {
    case CellTable::Joints:
        return readJointCell(truss, cell, text);
    case CellTable::Members:
        return readMemberCell(truss, cell, text);
    case CellTable::Supports:
        return readSupportCell(truss, cell, text);
    case CellTable::Materials:
        return readMaterialCell(truss, cell, text);
    case CellTable::Sections:
        return readSectionCell(truss, cell, text);
    case CellTable::Loads:
        break;
    }
    return readLoadCell(truss, cell, text);
}

RowOrder asDrawn(const Truss& truss, CellTable table) {
    RowOrder order(static_cast<std::size_t>(rowsOf(truss, table)) + 1);
    std::iota(order.begin(), order.end(), 0);
    return order;
}

std::optional<Cell> cellAfter(const Truss& truss, const Cell& cell, FieldEnd how, RowOrder order) {
    Cell next = cell;
    const int columns = columnsOf(cell.table);
    const int step = how == FieldEnd::PreviousField ? -1 : how == FieldEnd::Below ? columns : 1;
    if (how == FieldEnd::Kept || how == FieldEnd::GivenUp) {
        return std::nullopt;
    }
    for (int row = order.back() + 1; row <= rowsOf(truss, cell.table); ++row) {
        order.push_back(row);
    }
    const auto found = std::find(order.begin(), order.end(), cell.row);
    const int end = static_cast<int>(order.size()) * columns;
    int place = found == order.end()
                    ? end
                    : static_cast<int>(found - order.begin()) * columns + cell.column + step;
    for (; place >= 0 && place < end; place += step) {
        next.row = order[static_cast<std::size_t>(place / columns)];
        next.column = place % columns;
        if (canType(truss, next)) {
            return next;
        }
    }
    return std::nullopt;
}

bool finishCell(const AppState& state, const FieldDone& done, Actions& actions, TypedIn where) {
    const std::optional<Cell> cell = cellOf(done.key);
    if (!cell && done.key != kTitleKey) {
        return false;
    }
    if (state.field.key == done.key || state.field.key.empty()) { // not one that was begun since
        actions.push_back(EndField{});
    }
    if (done.how == FieldEnd::GivenUp) {
        return true;
    }
    if (!cell) {
        if (done.text != state.truss.title) {
            actions.push_back(Commit{SetTitle{done.text}});
        }
        return true;
    }
    if (!canType(state.truss, *cell)) { // the row went away while it was typed in
        return true;
    }
    const RowOrder order = where == TypedIn::Page ? asDrawn(state.truss, cell->table)
                                                  : shownRows(state, cell->table, cell->row);
    const Truss after = commitCell(state, *cell, done, order, actions);
    if (const std::optional<Cell> next = cellAfter(after, *cell, done.how, order)) {
        begin(after, *next, actions);
    }
    return true;
}

} // namespace gusset
