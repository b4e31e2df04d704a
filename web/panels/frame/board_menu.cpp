// The menu of a long press or the right button, at its place on the board.
#include "canvas/hands/board_menu.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"

#include <imgui_internal.h>

#include <cmath>

namespace gusset {
void boardMenu(PanelContext& context) {
    const AppState& state = context.state;
    if (!state.menu.open) {
        return;
    }
    const std::vector<MenuLine> lines = boardMenuLines(state);
    if (lines.empty()) {
        context.actions.push_back(SetMenu{});
        return;
    }
    const Ui& ui = context.ui;
    const Rect place = boardMenuRect(state, lines.size());
    beginSheet(ui, "board menu", place, {.padding = {4, 4}});
    ImGui::BringWindowToDisplayFront(ImGui::GetCurrentWindow());
    const ImVec2 low{ui.px(place.at.x), ui.px(place.at.y)};
    const ImVec2 high{low.x + ui.px(place.size.x), low.y + ui.px(place.size.y)};
    ImGui::GetWindowDrawList()->AddRect(low, high, packed(ui.palette->edge), 0, 0, ui.px(1.5));
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {0, 0});
    const float height = ui.px(kTouchTarget);
    const ImFont& font = *ui.fonts.strong;
    putText(*ImGui::GetWindowDrawList(), font,
            {low.x + ui.px(12), std::round(low.y + ui.px(4) + (height - font.FontSize) / 2)},
            packed(ui.palette->ink), boardMenuTitle(state));
    ImGui::Dummy({1, height});
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const ImVec2 size{ImGui::GetContentRegionAvail().x, height};
        if (menuRow(ui, lines[i].label.c_str(), size, state.menu.lit == i)) {
            chooseMenuLine(state, i, context.actions);
        }
    }
    ImGui::PopStyleVar();
    endSheet();
}

} // namespace gusset
