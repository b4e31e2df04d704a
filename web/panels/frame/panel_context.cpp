#include "panels/frame/panel_context.hpp"

#include "report/results/table.hpp"

#include "app/fields/field_key.hpp"
#include "phrases/page_text.hpp"

#include <imgui_internal.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

constexpr double kPencil = 22; // CSS px after the words of a field that is marked as one

Rect toCss(const Ui& ui, const Table::Box& box) {
    return {{box.low.x / ui.scale, box.low.y / ui.scale},
            {(box.high.x - box.low.x) / ui.scale, (box.high.y - box.low.y) / ui.scale}};
}

// A field reached by keyboard may be out of sight: it is scrolled into view once, when typing
// begins.
void bringIntoView(const std::string& key, const Table::Box& box) {
    ImGuiStorage& memory = *ImGui::GetStateStorage();
    const ImGuiID slot = ImGui::GetID("field brought into view");
    const int mark = static_cast<int>(ImHashStr(key.c_str()));
    if (memory.GetInt(slot) == mark) {
        return;
    }
    memory.SetInt(slot, mark);
    const ImRect inner = ImGui::GetCurrentWindow()->InnerClipRect;
    if (box.low.y < inner.Min.y || box.high.y > inner.Max.y) {
        ImGui::SetScrollFromPosY(box.low.y - ImGui::GetWindowPos().y, 0.4f);
    }
}

void placeInput(PanelContext& context, const Table::Box& box, const FieldLook& look) {
    bringIntoView(keyOf(look.field), box);
    if (ImGui::IsRectVisible(box.low, box.high)) {
        context.field.place = FieldPlace{.field = look.field,
                                         .name = look.name,
                                         .text = context.state.field.text,
                                         .rect = toCss(context.ui, box),
                                         .numeric = look.numeric,
                                         .keys = extraKeys(look.field),
                                         .goesOn = context.state.field.goesOn};
    }
}

void drawText(const Ui& ui, const Table::Box& box, const FieldLook& look) {
    const bool empty = look.look.empty();
    const float pad = ui.px(8);
    const float mark = look.marked ? ui.px(kPencil) : 0;
    const float width = putFitted(*ImGui::GetWindowDrawList(), ui, empty ? look.hint : look.look,
                                  {.low = {box.low.x + pad, box.low.y},
                                   .high = {box.high.x - pad - mark, box.high.y},
                                   .align = look.align,
                                   .isNumber = !empty && look.align == Align::Right,
                                   .wraps = look.wraps,
                                   .decimals = look.decimals,
                                   .font = look.font ? look.font : ui.fonts.body,
                                   .ink = packed(empty ? ui.palette->muted : ui.palette->ink)});
    if (look.marked) {
        const ImVec2 at{box.low.x + pad + width + mark / 2, (box.low.y + box.high.y) / 2};
        drawIcon(*ImGui::GetWindowDrawList(), Icon::Pencil, at, ui.px(14),
                 packed(ui.palette->muted));
    }
}

} // namespace

bool field(PanelContext& context, const Table::Box& box, const FieldLook& look) {
    const Ui& ui = context.ui;
    const ImVec2 back = ImGui::GetCursorScreenPos();
    ImGui::SetCursorScreenPos(box.low);
    const bool pressed = ImGui::InvisibleButton(keyOf(look.field).c_str(),
                                                {box.high.x - box.low.x, box.high.y - box.low.y});
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const bool editing = context.state.field.id == look.field;
    if (ImGui::IsItemHovered()) {
        ImGui::SetMouseCursor(ImGuiMouseCursor_TextInput);
        list.AddRectFilled(box.low, box.high, packed(ui.palette->wash));
    }
    if (showsFocus()) {
        const std::string value =
            look.look.empty() ? words(context, phrase::kEmptyCell) : look.look;
        drawFocus(ui, sayPlain(*context.state.book, phrase::kValueOf,
                               {{"value", value}, {"what", look.name}}));
    }
    if (pressed) {
        context.actions.push_back(BeginField{look.field, look.text});
    } else if (!context.field.typed.empty() && ImGui::IsItemFocused()) {
        context.actions.push_back(
            BeginField{look.field, std::exchange(context.field.typed, {}), true});
    }
    if (editing) {
        list.AddRect(box.low, box.high, packed(ui.palette->accent), 0, 0, ui.px(2));
        placeInput(context, box, look);
    } else {
        if (look.framed) {
            list.AddRect(box.low, box.high, packed(ui.palette->edge), ui.px(3), 0, ui.px(1));
        }
        drawText(ui, box, look);
    }
    ImGui::SetCursorScreenPos(back);
    return pressed;
}

void sentences(const PanelContext& context, const std::vector<std::string>& lines,
               const std::vector<std::string>& warnings) {
    for (const std::string& line : lines) {
        const bool warns = line == context.derived.whyUnsolved ||
                           std::find(warnings.begin(), warnings.end(), line) != warnings.end();
        paragraph(context.ui, line, warns ? Ink::Warning : Ink::Plain);
    }
}

void verdictInstead(const PanelContext& context) {
    sentences(context, context.derived.verdict, context.derived.warnings);
}

bool fieldLine(PanelContext& context, const FieldLook& look) {
    const ImVec2 low = ImGui::GetCursorScreenPos();
    const ImVec2 size{ImGui::GetContentRegionAvail().x,
                      std::max(context.ui.rowHeight(), context.ui.px(36))};
    const bool pressed = field(context, {low, {low.x + size.x, low.y + size.y}}, look);
    ImGui::Dummy(size);
    return pressed;
}

bool cellField(PanelContext& context, const Table& table, int column, const Cell& cell) {
    const Truss& truss = context.state.truss;
    if (!canType(truss, cell)) {
        return false;
    }
    FieldLook look;
    look.field = cell;
    look.name = cellName({*context.state.book, truss}, cell);
    look.text = cellText(truss, cell);
    look.look = cellLook(truss, cell);
    look.numeric = isNumber(cell);
    look.align = look.numeric ? Align::Right : Align::Left;
    look.decimals = table.decimals(column);
    if (cell.row == rowsOf(truss, cell.table)) {
        look.hint = words(context, *columnOf(cell).more.hint);
    }
    return field(context, table.cell(column), look);
}

void drawForceSign(ImDrawList& list, const Ui& ui, Ink sense, ImVec2 at, float length) {
    const ImU32 ink = packed(lineColour(*ui.palette, sense));
    const float end = at.x + length;
    if (sense == Ink::Tension) {
        list.AddLine(at, {end, at.y}, ink, ui.px(3));
    } else if (sense == Ink::Compression) {
        list.AddLine({at.x, at.y - ui.px(2.5)}, {end, at.y - ui.px(2.5)}, ink, ui.px(2));
        list.AddLine({at.x, at.y + ui.px(2.5)}, {end, at.y + ui.px(2.5)}, ink, ui.px(2));
    } else {
        for (float x = at.x; x < end; x += ui.px(8)) {
            list.AddLine({x, at.y}, {std::min(x + ui.px(4), end), at.y}, ink, ui.px(1.5));
        }
    }
}

void hoverRow(PanelContext& context, const ThingId& thing) {
    const bool finger = ImGui::GetIO().MouseSource == ImGuiMouseSource_TouchScreen;
    if (!finger && context.state.hover != thing) {
        context.actions.push_back(SetHover{thing});
    }
}

void pressableRow(PanelContext& context, Table& table, const ThingId& thing) {
    const auto state = table.row({.id = rowOf(thing),
                                  .selected = holds(context.state.selection, thing),
                                  .lit = context.state.hover == thing,
                                  .pressable = true});
    if (state.hovered) {
        hoverRow(context, thing);
    }
    if (state.pressed) {
        context.actions.push_back(SetSelection{thingsOf(thing)});
    }
}

bool cellButton(const Ui& ui, const Table::Box& box, const std::string& label, Icon icon) {
    const ImVec2 back = ImGui::GetCursorScreenPos();
    ImGui::SetCursorScreenPos(box.low);
    const bool pressed =
        ImGui::InvisibleButton(label.c_str(), {box.high.x - box.low.x, box.high.y - box.low.y});
    const bool lit = ImGui::IsItemHovered();
    const auto& ink = icon == Icon::Trash ? ui.palette->warning : ui.palette->accent;
    drawIcon(*ImGui::GetWindowDrawList(), icon,
             {(box.low.x + box.high.x) / 2, (box.low.y + box.high.y) / 2}, ui.px(18),
             packed(lit ? ink : ui.palette->edge));
    drawFocus(ui, visiblePart(label.c_str()));
    ImGui::SetCursorScreenPos(back);
    return pressed;
}

const char* words(const PanelContext& context, Phrase<> phrase) {
    return sentenceIn(*context.state.book, phrase.english);
}

std::string wordsAs(const PanelContext& context, Phrase<> phrase, const char* id) {
    return std::string(words(context, phrase)) + id;
}

UnitHeading headOf(const PanelContext& context, Phrase<> phrase, const std::string& unit) {
    const PhraseBook& book = *context.state.book;
    return {plainText(headed(book, say(book, phrase), unit)), words(context, phrase)};
}

void countedHeading(const PanelContext& context, Phrase<> phrase, int count) {
    sectionHeading(context.ui, wordsAs(context, phrase, "  ") + std::to_string(count));
}

} // namespace gusset
