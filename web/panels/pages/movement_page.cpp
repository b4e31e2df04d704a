#include "app/derived/result_lists.hpp"
#include "canvas/scene/movement.hpp"
#include "panels/frame/parts.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/listed.hpp"
#include "phrases/jobs.hpp"
#include "phrases/tables.hpp"

#include <array>
#include <string>

namespace gusset {
namespace {

// Larger, smaller, and an animation of the shape.
void shapeButtons(PanelContext& context) {
    const Ui& ui = context.ui;
    gap(ui, 4);
    if (!context.viewport.reducedMotion) {
        if (button(ui, "Play", {.primary = true})) {
            context.actions.push_back(SetMotion{{.plays = true}});
        }
        ImGui::SameLine();
    }
    const bool smaller = button(ui, "Smaller", {});
    ImGui::SameLine();
    const bool larger = button(ui, "Larger", {});
    if (smaller || larger) {
        const int steps = context.state.view.enlarge + (larger ? 1 : -1);
        context.actions.push_back(Set{&View::enlarge, steps});
    }
    gap(ui, 4);
}

void jointTable(PanelContext& context) {
    const std::string unit = symbolOf(context.state.truss.units.displacement);
    const std::string x = withUnit("→", unit.c_str());
    const std::string y = withUnit("↑", unit.c_str());
    const std::string total = headOf(context, phrase::kCellTotal, unit.c_str());
    const std::string joint = words(context, phrase::kCellJoint);
    const std::vector<MovementRow>& rows = context.derived.movements;
    const std::array columns{
        Column{joint, 56, 1, Align::Left, 0, false, longestOf(rows, &MovementRow::name)},
        Column{x, 80, 1, Align::Right, 1, true, longestOf(rows, &MovementRow::x)},
        Column{y, 80, 1, Align::Right, 2, true, longestOf(rows, &MovementRow::y)},
        Column{total, 84, 1, Align::Right, 3, true, longestOf(rows, &MovementRow::total)}};
    sectionHeading(context.ui, words(context, phrase::kHeadDisplacements));
    const std::vector<int> places = listedMovements(context.state, context.derived);
    listSearch(context, ListedTable::Displacements, static_cast<int>(rows.size()),
               static_cast<int>(places.size()), "find a joint");
    Table table(context.ui, "displacements", columns);
    listHeader(context, table, ListedTable::Displacements, "Displacements");
    const Table::TextLook plain{context.ui.palette->ink};
    drawListed(table, rows, places, [&](const MovementRow& row, int) {
        pressableRow(context, table, row.joint);
        table.text(0, row.name, plain);
        table.text(1, row.x, plain);
        table.text(2, row.y, plain);
        table.text(3, row.total, plain);
    });
}

void memberTable(PanelContext& context) {
    const Units& units = context.state.truss.units;
    const std::string stretch = headOf(context, phrase::kCellStretch, symbolOf(units.displacement));
    const std::string member = words(context, phrase::kCellMember);
    const std::string stress = headOf(context, phrase::kCellStress, symbolOf(units.stress));
    const std::vector<StretchRow>& rows = context.derived.stretches;
    const std::array columns{
        Column{member, 80, 1, Align::Left, 0, false, longestOf(rows, &StretchRow::name)},
        Column{stretch, 110, 1, Align::Right, 1, true, longestOf(rows, &StretchRow::stretch)},
        Column{stress, 100, 1, Align::Right, 2, true, longestOf(rows, &StretchRow::stress)}};
    sectionHeading(context.ui, words(context, phrase::kHeadMembers));
    const std::vector<int> places = listedStretches(context.state, context.derived);
    listSearch(context, ListedTable::Stretches, static_cast<int>(rows.size()),
               static_cast<int>(places.size()), "find a member");
    Table table(context.ui, "stretches", columns);
    listHeader(context, table, ListedTable::Stretches, "Members");
    const Table::TextLook plain{context.ui.palette->ink};
    drawListed(table, rows, places, [&](const StretchRow& row, int) {
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
        play = button(ui, "Show how it moves", {.primary = true});
    }
    if (count > 1) {
        ImGui::SameLine();
        if (button(ui, "Another way", {})) {
            context.actions.push_back(Set{&NotebookState::mechanism, (shown + 1) % count});
            play = true;
        }
        ImGui::SameLine();
        const int after = play ? (shown + 1) % count : shown % count;
        besideButtons(ui, std::to_string(after + 1) + " of " + std::to_string(count));
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
