#include "panels/pages/model_table.hpp"

#include "app/fields/load_text.hpp"
#include "core/number.hpp"
#include "model/catalogue/section_properties.hpp"
#include "panels/pages/ordered_rows.hpp"
#include "phrases/columns.hpp"
#include "phrases/page_text.hpp"
#include "report/results/influence_text.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace gusset {
namespace {

// The thing on the board that a row stands for.
Hit thingIn(CellTable table, int row) {
    switch (table) {
    case CellTable::Joints:
        return JointId{row};
    case CellTable::Members:
        return MemberId{row};
    case CellTable::Supports:
        return SupportId{row};
    case CellTable::Loads:
        return LoadId{row};
    case CellTable::Materials:
    case CellTable::Sections:
        break;
    }
    return std::nullopt;
}

struct Headings {
    std::vector<UnitHeading> heads;
    std::vector<Column> columns; // without texts of their own
};

int decimalsOfColumn(const Truss& truss, CellTable table, int column) {
    int most = 0;
    for (int row = 0; row < rowsOf(truss, table); ++row) {
        most = std::max(most, decimalsIn(cellLook(truss, {table, row, column})));
    }
    return std::min(most, kMostAligned);
}

Headings headingsOf(const PanelContext& context, CellTable table) {
    const ModelTable& of = modelTable(table);
    Headings headings;
    for (const int column : of.inNotebook) {
        const CellColumn& it = of.columns[static_cast<std::size_t>(column)];
        const std::string unit =
            it.notebook.namesUnit ? symbolOf(context.state.truss.units, it.unit) : "";
        headings.heads.push_back(headOf(context, it.notebook.heading, unit));
    }
    for (std::size_t i = 0; i < of.inNotebook.size(); ++i) {
        const int column = of.inNotebook[i];
        const CellColumn& it = of.columns[static_cast<std::size_t>(column)];
        const bool number = it.form == CellForm::Number;
        headings.columns.push_back(
            {.heading = headings.heads[i],
             .least = it.notebook.least,
             .share = it.notebook.share,
             .align = number || it.notebook.atRight ? Align::Right : Align::Left,
             .orders = it.notebook.orders ? std::optional(column) : std::nullopt,
             .longest = headings.heads[i].words, // no heading is cut while another has room
             .font = context.ui.fonts.small,
             .decimals = number ? decimalsOfColumn(context.state.truss, table, column) : 0});
    }
    headings.columns.push_back({{}, kTouchTarget, 0});
    return headings;
}

// The visible rows, and the one being edited even if it is not visible.
ImGuiListClipper clipperFor(const PanelContext& context, const Table& table, CellTable of,
                            const RowOrder& rows) {
    ImGuiListClipper clipper;
    clipper.Begin(static_cast<int>(rows.size()), table.rowStep());
    if (const auto* typed = openField<Cell>(context.state); typed && typed->table == of) {
        const auto found = std::find(rows.begin(), rows.end() - 1, typed->row);
        clipper.IncludeItemByIndex(static_cast<int>(found - rows.begin()));
    }
    return clipper;
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
                 packed(ui.palette->ink),
                 words(context, pin ? phrase::kKindPin : phrase::kKindRoller));
    const Writer writer{*context.state.book, context.state.truss};
    drawFocus(ui, sayPlain(writer, phrase::kValueOf,
                           {{"value", words(context, pin ? phrase::kKindPin : phrase::kKindRoller)},
                            {"what",
                             cellName(writer, {CellTable::Supports, row, column::kSupportKind})}}));
    ImGui::SetCursorScreenPos(back);
}

// In up to two lines; a chord that is longer by its first and last joint.
void loadPlace(const PanelContext& context, const Table::Box& box, const Load& load) {
    const Ui& ui = context.ui;
    const Truss& truss = context.state.truss;
    const ImFont& font = *ui.fonts.small;
    const float pad = ui.px(4);
    const TextFit fit{.wrap = box.high.x - box.low.x - 2 * pad};
    std::string words = placeOfLoad({*context.state.book, truss}, load);
    const float most = box.high.y - box.low.y;
    if (const auto* chord = std::get_if<ChordLoad>(&load.what);
        chord && textSize(font, words, fit).y > most) {
        words = sayPlain(*context.state.book, phrase::kAlongFromTo,
                         {{"from", truss.joints[chord->chord.front().at()].label},
                          {"to", truss.joints[chord->chord.back().at()].label}});
    }
    const ImVec2 size = textSize(font, words, fit);
    const float middle = (box.low.y + box.high.y) / 2;
    putText(*ImGui::GetWindowDrawList(), font, {box.low.x + pad, std::round(middle - size.y / 2)},
            packed(ui.palette->ink), words, fit);
}

std::string areaText(const Truss& truss, const Section& section) {
    const std::optional<double> area = propertiesOf(section).area;
    return area ? formatNumber(*area,
                               {NumberForm::Significant, 4, truss.classSettings.decimalSign, false})
                : "";
}

// What is shown in a cell that can't be edited.
void otherwise(PanelContext& context, Table& table, int place, const Cell& cell, bool isNew) {
    const Truss& truss = context.state.truss;
    const Palette& palette = *context.ui.palette;
    const auto row = static_cast<std::size_t>(cell.row);
    if (isNew) {
        if (cell.table == CellTable::Joints) {
            table.text(place, nextLabel(truss), {palette.muted});
        }
    } else if (cell.table == CellTable::Supports && cell.column == column::kSupportKind) {
        supportKind(context, table.cell(place), cell.row);
    } else if (cell.table == CellTable::Loads && cell.column == 0) {
        loadPlace(context, table.cell(place), truss.loads[row]);
    } else if (cell.table == CellTable::Loads) {
        table.text(place, cellLook(truss, cell), {palette.ink});
    } else if (cell.table == CellTable::Sections && cell.column == column::kSectionArea) {
        table.text(place, areaText(truss, truss.sections[row]), {palette.muted});
    }
}

// The kind of a support is pressed to change it, and typed where Tab leads to it.
bool isPressed(const AppState& state, const Cell& cell) {
    return cell.table == CellTable::Supports && cell.column == column::kSupportKind &&
           state.field.id != FieldId(cell);
}

void rowOf(PanelContext& context, Table& table, CellTable of, int row) {
    const ModelTable& model = modelTable(of);
    const bool isNew = row == rowsOf(context.state.truss, of);
    const Hit thing = isNew ? Hit() : thingIn(of, row);
    const Table::RowState state =
        table.row({.id = row,
                   .selected = thing && holds(context.state.selection, *thing),
                   .lit = thing && context.state.hover == thing});
    if (state.hovered && thing) {
        hoverRow(context, *thing);
    }
    int place = 0;
    for (const int column : model.inNotebook) {
        const Cell cell{of, row, column};
        if (!canType(context.state.truss, cell) || isPressed(context.state, cell)) {
            otherwise(context, table, place, cell, isNew);
        } else if (cellField(context, table, place, cell) && thing &&
                   (column == 0 || of != CellTable::Supports)) {
            context.actions.push_back(SetSelection{thingsOf(thing)});
        }
        ++place;
    }
    const std::string remove =
        wordsAs(context, phrase::kRemove, "##") + std::string(model.key) + std::to_string(row);
    if (!isNew && trashButton(context.ui, table.cell(place), remove)) {
        context.actions.push_back(Commit{model.remove(row)});
    }
}

} // namespace

void drawModelTable(PanelContext& context, CellTable of, void (*below)(PanelContext&)) {
    const Truss& truss = context.state.truss;
    const ModelTable& model = modelTable(of);
    const int count = rowsOf(truss, of);
    if (thingIn(of, 0)) {
        countedHeading(context, model.name, count);
    } else {
        sectionHeading(context.ui, words(context, model.name));
    }
    const RowOrder rows = shownRows(context.state, of);
    listSearch(context, orderedAs(of), count, static_cast<int>(rows.size()) - 1, model.find);
    const Headings headings = headingsOf(context, of);
    Table table(context.ui, (std::string(model.key) + "s").c_str(), headings.columns);
    listHeader(context, table, orderedAs(of), model.name);
    ImGuiListClipper clipper = clipperFor(context, table, of, rows);
    while (clipper.Step()) {
        for (int place = clipper.DisplayStart; place < clipper.DisplayEnd; ++place) {
            rowOf(context, table, of, rows[static_cast<std::size_t>(place)]);
        }
    }
    if (below != nullptr) {
        below(context);
    }
}

} // namespace gusset
