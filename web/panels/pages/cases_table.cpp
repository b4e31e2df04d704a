#include "app/fields/load_cells.hpp"
#include "model/edit/load_cases.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/list_field.hpp"
#include "phrases/columns.hpp"
#include "phrases/model.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace gusset {
namespace {

// One row per case, with the combination's name in the first.
void combination(PanelContext& context, Table& table, int row) {
    const Truss& truss = context.state.truss;
    const std::vector<std::string> cases = caseNames(truss);
    const int count = static_cast<int>(cases.size());
    for (int part = 0; part < std::max(count, 1); ++part) {
        table.row({.id = 1000 * row + part});
        if (part == 0) {
            listField(context, table.cell(0), {ListFieldKind::CombinationName, row, 0},
                      words(context, phrase::kCellName));
            if (trashButton(context.ui, table.cell(3),
                            wordsAs(context, phrase::kRemoveCombination, "##") +
                                std::to_string(row))) {
                context.actions.push_back(Commit{removeCombination(truss, row)});
            }
        }
        if (part < count) {
            table.text(1, cases[static_cast<std::size_t>(part)], {context.ui.palette->muted});
            listField(context, table.cell(2), {ListFieldKind::Factor, row, part}, "0");
        }
    }
}

void loadCase(PanelContext& context, Table& table, int row, const std::string& name) {
    const Truss& truss = context.state.truss;
    table.row({.id = row});
    listField(context, table.cell(0), {ListFieldKind::CaseName, row, 0},
              words(context, phrase::kCellName));
    listField(context, table.cell(1), {ListFieldKind::CaseKind, row, 0},
              words(context, phrase::kNone));
    const std::string number = std::to_string(row);
    if (cellButton(context.ui, table.cell(2), wordsAs(context, phrase::kCopyCase, "##") + number,
                   Icon::Plus)) {
        context.actions.push_back(Commit{copyCase(truss, name)});
    }
    if (trashButton(context.ui, table.cell(3),
                    wordsAs(context, phrase::kRemoveCase, "##") + number)) {
        context.actions.push_back(Commit{removeCase(truss, name)});
    }
}

} // namespace

void casesTable(PanelContext& context) {
    const std::vector<std::string> cases = caseNames(context.state.truss);
    if (cases.empty()) {
        return;
    }
    const std::array columns{Column{{words(context, phrase::kCellName)}, 110, 1},
                             Column{{words(context, phrase::kCellStandsFor)}, 110, 1},
                             Column{{words(context, phrase::kCellCopy)}, kTouchTarget, 0},
                             Column{{}, kTouchTarget, 0}};
    const int count = static_cast<int>(cases.size());
    countedHeading(context, phrase::kHeadCases, count);
    Table table(context.ui, "cases", columns);
    table.header();
    for (int row = 0; row < count; ++row) {
        loadCase(context, table, row, cases[static_cast<std::size_t>(row)]);
    }
}

void combinationsTable(PanelContext& context) {
    const Truss& truss = context.state.truss;
    const int count = static_cast<int>(truss.combinations.size());
    const std::array columns{Column{{words(context, phrase::kCellCombination)}, 110, 1},
                             Column{{words(context, phrase::kCellOfCase)}, 90, 1},
                             Column{{words(context, phrase::kCellTimes)}, 70, 0.6, Align::Right},
                             Column{{}, kTouchTarget, 0}};
    countedHeading(context, phrase::kHeadCombinations, count);
    Table table(context.ui, "combinations", columns);
    table.header();
    for (int row = 0; row < count; ++row) {
        combination(context, table, row);
    }
    table.row({.id = -1});
    listField(context, table.cell(0), {ListFieldKind::CombinationName, count, 0},
              words(context, phrase::kNewName));
}

void listField(PanelContext& context, const Table::Box& box, const ListField& of,
               const char* hint) {
    const Truss& truss = context.state.truss;
    if (!canType(truss, of)) {
        return;
    }
    const bool name = isNamed(of);
    FieldLook look;
    look.field = of;
    look.name = listName({*context.state.book, truss}, of);
    look.text = listText(truss, of);
    look.look = listLook(truss, of);
    look.hint = hint;
    look.align = name ? Align::Left : Align::Right;
    look.numeric = !name;
    field(context, box, look);
}

} // namespace gusset
