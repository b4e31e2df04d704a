#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/frame.hpp"

#include <imgui_internal.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {
namespace {

constexpr std::array<Phrase<>, 4> kTabs{phrase::kTabModel, phrase::kTabResults, phrase::kTabWorking,
                                        phrase::kTabShare};
// The stops of the sheet on a narrow page: an edge, half, nearly all.
constexpr std::array kStops{0.18, 0.45, 0.85};
constexpr double kUsualWidth = 400; // of the column, CSS px

double nearestStop(double share) {
    return *std::min_element(kStops.begin(), kStops.end(), [share](double a, double b) {
        return std::fabs(a - share) < std::fabs(b - share);
    });
}

// Drags the left edge of the column.
void widthHandle(PanelContext& context) {
    const Ui& ui = context.ui;
    const Rect& place = context.layout.notebook;
    const ImVec2 low{ui.px(place.at.x), ui.px(place.at.y)};
    ImGui::SetCursorScreenPos(low);
    ImGui::InvisibleButton("notebook width", {ui.px(12), ui.px(place.size.y)});
    const bool pressedByKey =
        ImGui::IsItemActivated() &&
        ImGui::GetCurrentContext()->ActiveIdSource == ImGuiInputSource_Keyboard;
    if (pressedByKey) { // narrow and wide in turn
        const bool narrow = context.state.notebook.width <= kUsualWidth;
        context.actions.push_back(
            Set{&NotebookState::width, narrow ? context.viewport.size.x : kUsualWidth});
    }
    drawFocus(ui, words(context, phrase::kNotebookWidth));
    const bool lit = ImGui::IsItemHovered() || ImGui::IsItemActive();
    ImGui::GetWindowDrawList()->AddRectFilled(
        low, {low.x + ui.px(lit ? 3 : 1), low.y + ui.px(place.size.y)},
        packed(lit ? ui.palette->accent : ui.palette->rule));
    if (lit) {
        ImGui::SetMouseCursor(ImGuiMouseCursor_ResizeEW);
    }
    if (ImGui::IsItemActive() && ImGui::IsMouseDragging(0)) {
        const double width = context.viewport.size.x - ImGui::GetIO().MousePos.x / ui.scale;
        context.actions.push_back(Set{&NotebookState::width, width});
    }
}

// The head of the sheet is dragged up and down and goes to the nearest stop; a tap moves it to the
// next stop.
void sheetHandle(PanelContext& context) {
    const Ui& ui = context.ui;
    const ImVec2 low = ImGui::GetCursorScreenPos();
    const float width = ui.px(kTouchTarget);
    ImGui::InvisibleButton("notebook height", {width, ui.px(kTouchTarget)});
    const ImVec2 middle{low.x + width / 2, low.y + ui.px(kTouchTarget / 2)};
    const double now = context.state.notebook.sheet;
    const bool highest = now > kStops[1] + 0.05;
    drawIcon(*ImGui::GetWindowDrawList(), highest ? Icon::Down : Icon::Up, middle, ui.px(22),
             packed(ui.palette->ink));
    drawFocus(ui, words(context, phrase::kNotebookHeight));
    const bool dragged = ImGui::GetIO().MouseDragMaxDistanceSqr[0] > ui.px(8) * ui.px(8);
    if (ImGui::IsItemActive() && dragged) {
        const double y = ImGui::GetIO().MousePos.y / ui.scale - kTouchTarget / 2;
        context.actions.push_back(Set{&NotebookState::sheet, 1 - y / context.viewport.size.y});
    } else if (ImGui::IsItemDeactivated()) {
        const double next = highest                        ? kStops[0]
                            : nearestStop(now) < kStops[1] ? kStops[1]
                                                           : kStops[2];
        context.actions.push_back(Set{&NotebookState::sheet, dragged ? nearestStop(now) : next});
    }
}

void tabBar(PanelContext& context) {
    if (context.layout.narrow) {
        sheetHandle(context);
        ImGui::SameLine(0, 0);
    }
    const int now = static_cast<int>(context.state.notebook.tab);
    const int chosen = wordChoice(context.ui, "tabs", words(context, kTabs), now, true);
    if (chosen != now) {
        turnTo(static_cast<NotebookTab>(chosen), context.actions);
        if (context.layout.narrow && context.state.notebook.sheet < kStops[1]) {
            // The lowest stop has no room for the page that was asked for.
            context.actions.push_back(Set{&NotebookState::sheet, kStops[1]});
        }
    }
    rule(context.ui);
}

void page(PanelContext& context) {
    switch (context.state.notebook.tab) {
    case NotebookTab::Model:
        modelTab(context);
        break;
    case NotebookTab::Forces:
        forcesTab(context);
        break;
    case NotebookTab::Working:
        workingTab(context);
        break;
    case NotebookTab::Share:
        shareTab(context);
        break;
    }
}

} // namespace

void notebookPanel(PanelContext& context) {
    if (!context.state.notebook.open) {
        return;
    }
    const bool narrow = context.layout.narrow;
    const bool reading = context.layout.reading;
    beginSheet(
        context.ui, "notebook", context.layout.notebook,
        {.padding = {static_cast<float>(notebookMargin(context.layout)), narrow ? 2.0f : 6.0f}});
    const ImVec2 start = ImGui::GetCursorScreenPos();
    if (narrow) {
        const float y = context.ui.px(context.layout.notebook.at.y);
        ImGui::GetWindowDrawList()->AddRectFilled(
            {0, y}, {context.ui.px(context.viewport.size.x), y + context.ui.px(1.5)},
            packed(context.ui.palette->edge));
    } else if (!reading) {
        widthHandle(context);
    }
    ImGui::SetCursorScreenPos(start);
    if (!reading) {
        tabBar(context);
    }
    page(context);
    endSheet();
}

} // namespace gusset
