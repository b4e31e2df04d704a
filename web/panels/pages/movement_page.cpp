#include "app/derived/result_lists.hpp"
#include "canvas/scene/movement.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/ordered_rows.hpp"
#include "phrases/columns.hpp"
#include "phrases/results.hpp"
#include "phrases/results/jobs.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/table_view.hpp"
#include "phrases/working.hpp"

#include <array>
#include <string>

namespace gusset {
namespace {

// Larger, smaller, and an animation of the shape.
void shapeButtons(PanelContext& context) {
    const Ui& ui = context.ui;
    gap(ui, 4);
    if (!context.viewport.reducedMotion) {
        if (button(ui, words(context, phrase::kPlay), {.primary = true})) {
            context.actions.push_back(SetMotion{{.plays = true}});
        }
        ImGui::SameLine();
    }
    const bool smaller = button(ui, words(context, phrase::kSmaller));
    ImGui::SameLine();
    const bool larger = button(ui, words(context, phrase::kLarger));
    if (smaller || larger) {
        const int steps = context.state.view.enlarge + (larger ? 1 : -1);
        context.actions.push_back(Set{&View::enlarge, steps});
    }
    gap(ui, 4);
}

void jointTable(PanelContext& context) {
    const std::string unit = symbolOf(context.state.truss.units.displacement);
    const UnitHeading x = headOf(context, phrase::kRightSign, unit);
    const UnitHeading y = headOf(context, phrase::kUpSign, unit);
    const UnitHeading total = headOf(context, phrase::kCellTotal, unit);
    const char* joint = words(context, phrase::kCellJoint);
    const std::vector<MovementRow>& rows = context.derived.movements;
    const std::array columns{
        Column{{joint}, 56, 1, Align::Left, 0, false, longestOf(rows, &MovementRow::name)},
        Column{x, 80, 1, Align::Right, 1, true, longestOf(rows, &MovementRow::x), nullptr,
               decimalsOf(rows, &MovementRow::x)},
        Column{y, 80, 1, Align::Right, 2, true, longestOf(rows, &MovementRow::y), nullptr,
               decimalsOf(rows, &MovementRow::y)},
        Column{total, 84, 1, Align::Right, 3, true, longestOf(rows, &MovementRow::total), nullptr,
               decimalsOf(rows, &MovementRow::total)}};
    sectionHeading(context.ui, words(context, phrase::kHeadDisplacements));
    const std::vector<int> places = orderedMovements(context.state, context.derived);
    listSearch(context, SortedTable::Displacements, static_cast<int>(rows.size()),
               static_cast<int>(places.size()), phrase::kFindJoint);
    Table table(context.ui, "displacements", columns);
    listHeader(context, table, SortedTable::Displacements, phrase::kHeadDisplacements);
    const Table::TextLook plain{context.ui.palette->ink};
    drawOrdered(table, rows, places, [&](const MovementRow& row, int) {
        pressableRow(context, table, row.joint);
        table.text(0, row.name, plain);
        table.text(1, row.x, plain);
        table.text(2, row.y, plain);
        table.text(3, row.total, plain);
    });
}

void memberTable(PanelContext& context) {
    const Units& units = context.state.truss.units;
    const UnitHeading stretch = headOf(context, phrase::kCellStretch, symbolOf(units.displacement));
    const char* member = words(context, phrase::kCellMember);
    const UnitHeading stress = headOf(context, phrase::kCellStress, symbolOf(units.stress));
    const std::vector<StretchRow>& rows = context.derived.stretches;
    const std::array columns{
        Column{{member}, 80, 1, Align::Left, 0, false, longestOf(rows, &StretchRow::name)},
        Column{stretch, 110, 1, Align::Right, 1, true, longestOf(rows, &StretchRow::stretch),
               nullptr, decimalsOf(rows, &StretchRow::stretch)},
        Column{stress, 100, 1, Align::Right, 2, true, longestOf(rows, &StretchRow::stress), nullptr,
               decimalsOf(rows, &StretchRow::stress)}};
    sectionHeading(context.ui, words(context, phrase::kHeadMembers));
    const std::vector<int> places = orderedStretches(context.state, context.derived);
    listSearch(context, SortedTable::Stretches, static_cast<int>(rows.size()),
               static_cast<int>(places.size()), phrase::kFindMember);
    Table table(context.ui, "stretches", columns);
    listHeader(context, table, SortedTable::Stretches, phrase::kHeadMembers);
    const Table::TextLook plain{context.ui.palette->ink};
    drawOrdered(table, rows, places, [&](const StretchRow& row, int) {
        pressableRow(context, table, row.member);
        table.text(0, row.name, plain);
        table.text(1, row.stretch, plain);
        table.text(2, row.stress, plain);
    });
}

} // namespace

void mechanismButtons(PanelContext& context) {
    const Ui& ui = context.ui;
    const int count = static_cast<int>(context.derived.solution.mechanisms.size());
    if (count == 0) {
        return;
    }
    gap(ui, 4);
    const int shown = context.state.notebook.mechanism;
    bool play = false;
    if (!context.viewport.reducedMotion) {
        play = button(ui, words(context, phrase::kShowMotion), {.primary = true});
    }
    if (count > 1) {
        ImGui::SameLine();
        if (button(ui, words(context, phrase::kAnotherMotion))) {
            context.actions.push_back(Set{&NotebookState::mechanism, (shown + 1) % count});
            play = true;
        }
        ImGui::SameLine();
        const int after = play ? (shown + 1) % count : shown % count;
        besideButtons(ui, sayPlain(*context.state.book, phrase::kOneOfMany,
                                   {{"i", after + 1}, {"n", count}}));
    }
    if (play) {
        context.actions.push_back(SetMotion{{.plays = true}});
    }
    gap(ui, 4);
}

void movementPage(PanelContext& context) {
    beginScroll(context.ui, "movement");
    gap(context.ui, 4);
    const bool moves = !context.derived.solution.mechanisms.empty();
    const Derived& derived = context.derived;
    if (moves || !derived.solution.solved) {
        verdictInstead(context);
    } else {
        sentences(context, derived.warnings, derived.warnings);
        sentences(context, derived.movementLines, derived.warnings);
    }
    mechanismButtons(context);
    loadChoice(context);
    if (context.derived.solution.displaced) {
        shapeButtons(context);
        jointTable(context);
        memberTable(context);
    }
    gap(context.ui, 16);
    endScroll();
}

} // namespace gusset
