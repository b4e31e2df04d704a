#include "phrases/tools.hpp"
#include "canvas/hands/tool.hpp"
#include "canvas/scene/lesson.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {
namespace {

struct ToolEntry {
    Tool tool;
    Icon icon;
    Phrase<> label;
    Phrase<> hint;
};
constexpr std::array kTools{
    ToolEntry{Tool::Select, Icon::Select, phrase::kToolSelect, phrase::kUseSelect},
    ToolEntry{Tool::Member, Icon::Member, phrase::kToolMember, phrase::kUseMember},
    ToolEntry{Tool::Pin, Icon::Pin, phrase::kToolPin, phrase::kUsePin},
    ToolEntry{Tool::Roller, Icon::Roller, phrase::kToolRoller, phrase::kUseRoller},
    ToolEntry{Tool::Load, Icon::Load, phrase::kToolLoad, phrase::kUseLoad},
    ToolEntry{Tool::Erase, Icon::Erase, phrase::kToolErase, phrase::kUseErase},
};

Phrase<> lessonHint(Lesson lesson, bool coarse) {
    switch (lesson) {
    case Lesson::FirstMember:
        return phrase::kLessonMember;
    case Lesson::Triangle:
        return phrase::kLessonTriangle;
    case Lesson::Pin:
        return phrase::kLessonPin;
    case Lesson::Roller:
        return phrase::kLessonRoller;
    case Lesson::Load:
        return coarse ? phrase::kLessonLoadByFinger : phrase::kLessonLoad;
    default:
        return phrase::kLessonForces;
    }
}

Phrase<> hintOf(const AppState& state, bool coarse) {
    if (state.chain.active) {
        return coarse ? phrase::kNextPlaceByFinger : phrase::kNextPlace;
    }
    if (cutsByDrag(state)) {
        return phrase::kCutByDrag;
    }
    const Tool tool = state.tool;
    const auto* entry = std::find_if(kTools.begin(), kTools.end(),
                                     [tool](const ToolEntry& it) { return it.tool == tool; });
    return entry->hint;
}

void hint(PanelContext& context, const char* says, const ImFont& font, Colour ink) {
    const Ui& ui = context.ui;
    const Rect& tools = context.layout.tools;
    const float left = ui.px(8);
    const float right = context.layout.narrow || context.layout.notebook.size.x == 0
                            ? ui.px(context.viewport.size.x - 8)
                            : ui.px(context.layout.notebook.at.x - 8);
    const float wrap = right - left;
    const ImVec2 size = font.CalcTextSizeA(font.FontSize, FLT_MAX, wrap, says);
    const ImVec2 at{std::round(ui.px(tools.at.x + tools.size.x / 2) - size.x / 2),
                    std::round(ui.px(tools.at.y - 6) - size.y)};
    ImDrawList& list = *ImGui::GetBackgroundDrawList();
    const float pad = ui.px(6);
    Colour paper = ui.palette->board;
    paper.alpha = 220;
    list.AddRectFilled({at.x - pad, at.y - pad / 2}, {at.x + size.x + pad, at.y + size.y + pad / 2},
                       packed(paper), ui.px(3));
    list.AddText(&font, font.FontSize, at, packed(ink), says, nullptr, wrap);
}

void showHint(PanelContext& context) {
    const Ui& ui = context.ui;
    if (offersStep(context.state, context.derived)) {
        const Lesson lesson = lessonOf(context.state, context.derived);
        hint(context, words(context, lessonHint(lesson, ui.coarse)), *ui.fonts.strong,
             ui.palette->accent);
    } else {
        hint(context, words(context, hintOf(context.state, ui.coarse)), *ui.fonts.small,
             ui.palette->muted);
    }
}

// Around the tool that the next of the first steps is taken with.
void markTool(const PanelContext& context, Tool tool) {
    const bool wanted = offersStep(context.state, context.derived) && context.state.tool != tool &&
                        toolFor(lessonOf(context.state, context.derived)) == tool;
    if (wanted) {
        ImGui::GetWindowDrawList()->AddRect(ImGui::GetItemRectMin(), ImGui::GetItemRectMax(),
                                            packed(context.ui.palette->accent), context.ui.px(4), 0,
                                            context.ui.px(2));
    }
}

} // namespace

void toolsPanel(PanelContext& context) {
    const Ui& ui = context.ui;
    const Rect& place = context.layout.tools;
    if (place.size.x <= 0) {
        return;
    }
    beginSheet(ui, "tools", place, {.padding = {2, 2}});
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.AddRect({ui.px(place.at.x), ui.px(place.at.y)},
                 {ui.px(place.at.x + place.size.x), ui.px(place.at.y + place.size.y)},
                 packed(ui.palette->rule), 0, 0, ui.px(1));
    const ImVec2 each{ui.px((place.size.x - 4) / static_cast<double>(kTools.size())),
                      ui.px(place.size.y - 4)};
    for (const ToolEntry& entry : kTools) {
        if (&entry != kTools.begin()) {
            ImGui::SameLine(0, 0);
        }
        const bool selected = context.state.tool == entry.tool;
        if (toolButton(ui, words(context, entry.label), entry.icon, selected, each)) {
            context.actions.push_back(SetTool{entry.tool});
        }
        markTool(context, entry.tool);
    }
    endSheet();
    if (!severalPanel(context) && !inspector(context) && !hasRoomForOneOnly(context.viewport)) {
        showHint(context);
    }
}

} // namespace gusset
