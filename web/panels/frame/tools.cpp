#include "canvas/hands/tool.hpp"
#include "panels/frame/parts.hpp"
#include "panels/frame/tabs.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {
namespace {

struct ToolEntry {
    Tool tool;
    Icon icon;
    const char* label;
    const char* hint;
};
constexpr std::array kTools{
    ToolEntry{Tool::Select, Icon::Select, "Select",
              "Drag joints, tap to pick, press long for more."},
    ToolEntry{
        Tool::Member, Icon::Member, "Member",
        "Drag from joint to joint, or tap one after the other; a joint appears where you let go."},
    ToolEntry{Tool::Pin, Icon::Pin, "Pin", "Tap a joint to hold it in both directions."},
    ToolEntry{Tool::Roller, Icon::Roller, "Roller",
              "Tap a joint to let it roll. Tap again to turn the roller."},
    ToolEntry{Tool::Load, Icon::Load, "Load",
              "Drag from a joint to pull on it. Tap a load to type its size."},
    ToolEntry{Tool::Erase, Icon::Erase, "Erase", "Tap or stroke over what should go."},
};

// Words for the keyboard only where there is one to be seen.
const char* hintOf(const AppState& state, bool coarse) {
    if (state.chain.active) {
        return coarse ? "Tap the next place, or the last one again to end."
                      : "Click the next place, or type: 3, 3 @ 30°, or 2, 1. Escape ends.";
    }
    if (cutsByDrag(state)) {
        return "Tap a member or a support, or draw a line across the truss to cut it.";
    }
    const Tool tool = state.tool;
    const auto* entry = std::find_if(kTools.begin(), kTools.end(),
                                     [tool](const ToolEntry& it) { return it.tool == tool; });
    return entry->hint;
}

void hint(PanelContext& context, const char* words) {
    const Ui& ui = context.ui;
    const Rect& tools = context.layout.tools;
    const ImFont& font = *ui.fonts.small;
    const float left = ui.px(8);
    const float right = context.layout.narrow || context.layout.notebook.size.x == 0
                            ? ui.px(context.viewport.size.x - 8)
                            : ui.px(context.layout.notebook.at.x - 8);
    const float wrap = right - left;
    const ImVec2 size = font.CalcTextSizeA(font.FontSize, FLT_MAX, wrap, words);
    const ImVec2 at{std::round(ui.px(tools.at.x + tools.size.x / 2) - size.x / 2),
                    std::round(ui.px(tools.at.y - 6) - size.y)};
    ImDrawList& list = *ImGui::GetBackgroundDrawList();
    const float pad = ui.px(6);
    Colour paper = ui.palette->board;
    paper.alpha = 220;
    list.AddRectFilled({at.x - pad, at.y - pad / 2}, {at.x + size.x + pad, at.y + size.y + pad / 2},
                       packed(paper), ui.px(3));
    list.AddText(&font, font.FontSize, at, packed(ui.palette->muted), words, nullptr, wrap);
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
        if (toolButton(ui, entry.label, entry.icon, selected, each)) {
            context.actions.push_back(SetTool{entry.tool});
        }
    }
    endSheet();
    if (!severalPanel(context) && !inspector(context) && !hasRoomForOneOnly(context.viewport)) {
        hint(context, hintOf(context.state, context.ui.coarse));
    }
}

} // namespace gusset
