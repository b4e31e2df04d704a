#include "app/fields/cell_list.hpp"
#include "panels/frame/parts.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/listed.hpp"

#include "report/results/results_text.hpp"
#include "statics/moving/load_paths.hpp"

#include <algorithm>
#include <array>
#include <string>

namespace gusset {
namespace {

struct TableOf {
    CellTable table;
    HitKind kind;
    const char* id;
    RowOrder rows; // as they are shown
};

// With the field above the table by which its rows are found.
TableOf tableOf(PanelContext& context, CellTable table, HitKind kind, const char* id,
                const char* hint) {
    TableOf of{table, kind, id, shownRows(context.state, table)};
    listSearch(context, listedAs(table), rowsOf(context.state.truss, table),
               static_cast<int>(of.rows.size()) - 1, hint);
    return of;
}

std::string counted(const char* heading, int count) {
    return std::string(heading) + "  " + std::to_string(count);
}

// The rows in sight, and the one that is typed in even when it isn't.
ImGuiListClipper clipperFor(const PanelContext& context, const Table& table, const TableOf& of) {
    ImGuiListClipper clipper;
    clipper.Begin(static_cast<int>(of.rows.size()), table.rowStep());
    if (const std::optional<Cell> typed = cellOf(context.state.field.key);
        typed && typed->table == of.table) {
        const auto found = std::find(of.rows.begin(), of.rows.end() - 1, typed->row);
        clipper.IncludeItemByIndex(static_cast<int>(found - of.rows.begin()));
    }
    return clipper;
}

// One row with its fields; `middle` draws what is not a field.
template <class Middle>
void rowOf(PanelContext& context, Table& table, const TableOf& of, int row, int columns,
           const Middle& middle) {
    const bool isNew = row == rowsOf(context.state.truss, of.table);
    const Table::RowState state =
        table.row({.id = row,
                   .selected = !isNew && isSelected(context.state, of.kind, row),
                   .lit = !isNew && isHovered(context.state, of.kind, row)});
    if (state.hovered && !isNew) {
        hoverRow(context, of.kind, row);
    }
    middle(row, isNew);
    const std::string remove = std::string("Remove##") + of.id + std::to_string(row);
    if (!isNew && trashButton(context.ui, table.cell(columns - 1), remove)) {
        context.actions.push_back(Commit{Remove{only(of.kind, row)}});
    }
}

void select(PanelContext& context, HitKind kind, int row, bool pressed) {
    if (pressed) {
        context.actions.push_back(SetSelection{only(kind, row)});
    }
}

// Rows of typed cells; `extra` writes what stands in a row besides.
template <class Extra>
void typedRows(PanelContext& context, Table& table, const TableOf& of, Extra extra) {
    const int columns = columnsOf(of.table);
    ImGuiListClipper clipper = clipperFor(context, table, of);
    while (clipper.Step()) {
        for (int place = clipper.DisplayStart; place < clipper.DisplayEnd; ++place) {
            const int row = of.rows[static_cast<std::size_t>(place)];
            rowOf(context, table, of, row, columns + 1, [&](int at, bool isNew) {
                for (int column = 0; column < columns; ++column) {
                    const bool pressed = cellField(context, table, column, {of.table, at, column});
                    select(context, of.kind, at, pressed && !isNew);
                }
                extra(at, isNew);
            });
        }
    }
}

void joints(PanelContext& context) {
    const Truss& truss = context.state.truss;
    const char* unit = symbolOf(truss.units.length);
    const std::string x = withUnit("x", unit);
    const std::string y = withUnit("y", unit);
    const std::array columns{Column{"joint", 64, 1, Align::Left, column::kJointLabel},
                             Column{x, 70, 1, Align::Right, column::kJointX},
                             Column{y, 70, 1, Align::Right, column::kJointY},
                             Column{"", kTouchTarget, 0}};
    sectionHeading(context.ui, counted("Joints", rowsOf(truss, CellTable::Joints)));
    const TableOf of = tableOf(context, CellTable::Joints, HitKind::Joint, "joint", "find a joint");
    Table table(context.ui, "joints", columns);
    listHeader(context, table, ListedTable::Joints, "Joints");
    typedRows(context, table, of, [&](int, bool isNew) {
        if (isNew) {
            table.text(0, nextLabel(truss), {context.ui.palette->muted});
        }
    });
}

void members(PanelContext& context) {
    const Truss& truss = context.state.truss;
    const std::string misfit = withUnit("misfit", symbolOf(truss.units.displacement));
    const std::array columns{Column{"member", 70, 1.2, Align::Left, column::kMemberEnds},
                             Column{"section", 74, 1.2, Align::Left, column::kMemberSection},
                             Column{"ΔT, K", 52, 0.8, Align::Right, column::kMemberWarming},
                             Column{misfit, 74, 0.8, Align::Right, column::kMemberMisfit},
                             Column{"", kTouchTarget, 0}};
    sectionHeading(context.ui, counted("Members", rowsOf(truss, CellTable::Members)));
    const TableOf of = tableOf(context, CellTable::Members, HitKind::Member, "member",
                               "find a member or a section");
    Table table(context.ui, "members", columns);
    listHeader(context, table, ListedTable::Members, "Members");
    typedRows(context, table, of, [](int, bool) {});
}

void supportKind(PanelContext& context, const Table::Box& box, int row) {
    const Ui& ui = context.ui;
    Support support = context.state.truss.supports[static_cast<std::size_t>(row)];
    const bool pin = support.kind == SupportKind::Pin;
    const ImVec2 back = ImGui::GetCursorScreenPos();
    ImGui::SetCursorScreenPos(box.low);
    const std::string label = "support." + std::to_string(row) + ".kind";
    const ImVec2 size{box.high.x - box.low.x, box.high.y - box.low.y};
    if (ImGui::InvisibleButton(label.c_str(), size)) {
        support.kind = pin ? SupportKind::Roller : SupportKind::Pin;
        context.actions.push_back(Commit{ChangeSupport{SupportId{row}, support}});
    }
    ImDrawList& list = *ImGui::GetWindowDrawList();
    if (ImGui::IsItemHovered()) {
        ImGui::SetMouseCursor(ImGuiMouseCursor_Hand);
        list.AddRectFilled(box.low, box.high, packed(ui.palette->wash));
    }
    const float y = (box.low.y + box.high.y) / 2;
    drawIcon(list, pin ? Icon::Pin : Icon::Roller, {box.low.x + ui.px(16), y}, ui.px(20),
             packed(ui.palette->ink));
    list.AddText(ui.fonts.body, ui.fonts.body->FontSize,
                 {box.low.x + ui.px(32), std::round(y - ui.fonts.body->FontSize / 2)},
                 packed(ui.palette->ink), pin ? "pin" : "roller");
    drawFocus(ui);
    ImGui::SetCursorScreenPos(back);
}

void supports(PanelContext& context) {
    const Truss& truss = context.state.truss;
    const std::string settles = withUnit("settles", symbolOf(truss.units.displacement));
    const std::array columns{Column{"support", 58, 1, Align::Left, column::kSupportJoint},
                             Column{"kind", 88, 1, Align::Left, kOrderBySupportKind},
                             Column{"pushes at", 70, 1, Align::Right, column::kSupportDirection},
                             Column{settles, 76, 1, Align::Right}, Column{"", kTouchTarget, 0}};
    sectionHeading(context.ui, counted("Supports", rowsOf(truss, CellTable::Supports)));
    const TableOf of =
        tableOf(context, CellTable::Supports, HitKind::Support, "support", "find a joint");
    Table table(context.ui, "supports", columns);
    listHeader(context, table, ListedTable::Supports, "Supports");
    for (const int row : of.rows) {
        rowOf(context, table, of, row, 5, [&](int at, bool isNew) {
            select(context, of.kind, at, cellField(context, table, 0, {of.table, at, 0}) && !isNew);
            if (!isNew) {
                supportKind(context, table.cell(1), at);
                cellField(context, table, 2, {of.table, at, column::kSupportDirection});
                cellField(context, table, 3, {of.table, at, column::kSupportSettle});
            }
        });
    }
}

// Loads that no single joint carries stand as words.
std::string wordsOf(const Truss& truss, const Load& load) {
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        std::string words = "along ";
        for (const JointId joint : chord->chord) {
            words += (joint == chord->chord.front() ? "" : "–") + truss.joints[joint.at()].label;
        }
        return words;
    }
    return "self-weight";
}

constexpr double kFirstPerLength = -1; // downward, to be typed over

// What the load tool doesn't draw.
void furtherLoads(PanelContext& context) {
    const Truss& truss = context.state.truss;
    const bool weighs = std::any_of(truss.loads.begin(), truss.loads.end(), [](const Load& load) {
        return std::holds_alternative<SelfWeight>(load.what);
    });
    if (!weighs && button(context.ui, "Add self-weight", {})) {
        context.actions.push_back(Commit{AddLoad{{SelfWeight{}, {}, {}}}});
    }
    const std::vector<JointId> chord = fromLeft(truss, context.state.selection.joints);
    if (chord.size() > 1 && button(context.ui, "Load along the picked joints", {})) {
        context.actions.push_back(Commit{AddLoad{{ChordLoad{chord, kFirstPerLength}, {}, {}}}});
    }
}

void loads(PanelContext& context) {
    const Truss& truss = context.state.truss;
    const char* unit = symbolOf(truss.units.force);
    const std::string first = withUnit("→ or size", unit);
    const std::string second = withUnit("↑ or angle", unit);
    const std::array columns{Column{"load at", 64, 1, Align::Left, column::kLoadJoint},
                             Column{first, 80, 1, Align::Right, column::kLoadFirst},
                             Column{second, 80, 1, Align::Right, column::kLoadSecond},
                             Column{"case", 60, 1, Align::Left, column::kLoadCase},
                             Column{"", kTouchTarget, 0}};
    sectionHeading(context.ui, counted("Loads", rowsOf(truss, CellTable::Loads)));
    const TableOf of =
        tableOf(context, CellTable::Loads, HitKind::Load, "load", "find a joint or a case");
    Table table(context.ui, "loads", columns);
    listHeader(context, table, ListedTable::Loads, "Loads");
    typedRows(context, table, of, [&](int at, bool isNew) {
        if (!isNew && !canType(truss, {of.table, at, 0})) {
            table.text(0, wordsOf(truss, truss.loads[static_cast<std::size_t>(at)]),
                       {context.ui.palette->ink});
        }
    });
    smallPrint(context.ui, "Type 5 @ 30° for a size and an angle, or 3, −4 for two parts; "
                           "sums and units are read as well: 2*1.5 kN.");
    furtherLoads(context);
}

} // namespace

void modelTab(PanelContext& context) {
    beginScroll(context.ui, "model");
    joints(context);
    members(context);
    supports(context);
    loads(context);
    propertyTables(context);
    combinationsTable(context);
    movingTables(context);
    modelSettings(context);
    gap(context.ui, 16);
    endScroll();
}

} // namespace gusset
