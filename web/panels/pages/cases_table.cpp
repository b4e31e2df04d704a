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

} // namespace

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
    const bool name =
        of.kind == ListFieldKind::CombinationName || of.kind == ListFieldKind::MovingName;
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
