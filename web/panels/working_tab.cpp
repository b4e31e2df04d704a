#include "panels/parts.hpp"
#include "panels/tabs.hpp"
#include "ui/rich_layout.hpp"

#include <algorithm>
#include <string>

namespace gusset {
namespace {

void setStep(PanelContext& context, int step) {
    NotebookState notebook = context.state.notebook;
    notebook.step = step;
    context.actions.push_back(SetNotebook{notebook});
}

void bar(PanelContext& context, int step, int count) {
    const Ui& ui = context.ui;
    if (button(ui, "Previous step",
               {.icon = Icon::Previous, .showText = false, .enabled = step > 0})) {
        setStep(context, step - 1);
    }
    ImGui::SameLine();
    if (button(ui, "Next step",
               {.icon = Icon::Next,

                .enabled = step + 1 < count,
                .primary = true})) {
        setStep(context, step + 1);
    }
    ImGui::SameLine();
    const std::string place = std::to_string(step + 1) + " of " + std::to_string(count);
    besideButtons(ui, place);
    ImGui::SameLine();
    NotebookState notebook = context.state.notebook;
    if (toggle(ui, "All steps", notebook.wholeWorking)) {
        notebook.wholeWorking = !notebook.wholeWorking;
        context.actions.push_back(SetNotebook{notebook});
    }
    rule(ui);
}

RichLook lookOf(const Ui& ui, LineRole role) {
    const Palette& palette = *ui.palette;
    switch (role) {
    case LineRole::Heading:
        return {0, 0, palette.ink, ui.fonts.strong};
    case LineRole::Equation:
        return {16, 24, palette.ink};
    case LineRole::Result:
        return {16, 24, palette.accent, ui.fonts.strong};
    case LineRole::Caution:
        return {0, 0, palette.warning};
    case LineRole::Sentence:
        break;
    }
    return {0, 0, palette.ink};
}

// One step; the one that is looked at has a mark in the margin. Pressing it makes it that one.
void stepLines(PanelContext& context, int index, bool current) {
    const Ui& ui = context.ui;
    ImGui::PushID(index);
    const ImVec2 low = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.ChannelsSplit(2);
    list.ChannelsSetCurrent(1);
    ImGui::Indent(ui.px(14));
    gap(ui, 4);
    for (const WorkingLine& line : context.derived.lines[static_cast<std::size_t>(index)]) {
        drawRich(ui, line.runs, lookOf(ui, line.role));
    }
    gap(ui, 8);
    ImGui::Unindent(ui.px(14));
    const ImVec2 end = ImGui::GetCursorScreenPos();
    ImGui::SetCursorScreenPos(low);
    const bool pressed = ImGui::InvisibleButton("step", {width, std::max(end.y - low.y, 1.0f)});
    list.ChannelsSetCurrent(0);
    if (current) {
        list.AddRectFilled(low, {low.x + width, end.y}, packed(ui.palette->accentWash));
        list.AddRectFilled(low, {low.x + ui.px(4), end.y}, packed(ui.palette->accent));
    } else if (ImGui::IsItemHovered()) {
        list.AddRectFilled(low, {low.x + width, end.y}, packed(ui.palette->wash));
    }
    list.ChannelsMerge();
    drawFocus(ui);
    if (pressed) {
        setStep(context, index);
    }
    ImGui::PopID();
}

// When another step is looked at it is brought into view, once.
void follow(const Ui& ui, int step, float top) {
    ImGuiStorage& memory = *ImGui::GetStateStorage();
    const ImGuiID slot = ImGui::GetID("step followed");
    if (memory.GetInt(slot, -1) == step) {
        return;
    }
    memory.SetInt(slot, step);
    const float bottom = ImGui::GetCursorScreenPos().y;
    const float windowTop = ImGui::GetWindowPos().y;
    const float height = ImGui::GetWindowHeight();
    if (top < windowTop || bottom - top > height) {
        ImGui::SetScrollFromPosY(top - windowTop - ui.px(4), 0);
    } else if (bottom > windowTop + height) {
        ImGui::SetScrollFromPosY(bottom - windowTop + ui.px(8), 1);
    }
}

} // namespace

void workingTab(PanelContext& context) {
    const int step = shownStep(context.state, context.derived);
    if (step < 0) {
        gap(context.ui, 4);
        for (const std::string& line : context.derived.verdict) {
            paragraph(context.ui, line);
        }
        return;
    }
    const int count = static_cast<int>(context.derived.lines.size());
    bar(context, step, count);
    beginScroll(context.ui, "working");
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {0, 0});
    const int shown = context.state.notebook.wholeWorking ? count : step + 1;
    for (int i = 0; i < shown; ++i) {
        const float top = ImGui::GetCursorScreenPos().y;
        stepLines(context, i, i == step);
        if (i == step) {
            follow(context.ui, step, top);
        }
    }
    ImGui::PopStyleVar();
    gap(context.ui, 16);
    endScroll();
}

} // namespace gusset
