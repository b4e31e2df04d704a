#include "panels/parts.hpp"
#include "panels/tabs.hpp"

#include <array>

namespace gusset {
namespace {

struct Layer {
    const char* label;
    bool View::*shown;
};
constexpr std::array kLayers{
    Layer{"Member forces", &View::showForces},         Layer{"Reactions", &View::showReactions},
    Layer{"Deflected shape", &View::showMovement},     Layer{"Dimensions", &View::showDimensions},
    Layer{"Line width by force", &View::widthByForce}, Layer{"Largest forces", &View::showLargest},
    Layer{"Snap to the grid", &View::snapToGrid},
};
constexpr std::array kFigures{"force", "stress", "use"}; // in the order of MemberFigure
constexpr std::array kThemes{"System", "Paper", "Dark", "Sun"};

void menu(PanelContext& context) {
    const Ui& ui = context.ui;
    View view = context.state.view;
    bool changed = false;
    smallPrint(ui, "On the board");
    for (const Layer& layer : kLayers) {
        if (toggle(ui, layer.label, view.*layer.shown)) {
            view.*layer.shown = !(view.*layer.shown);
            changed = true;
        }
    }
    if (view.showForces) {
        smallPrint(ui, "Members are labelled by their");
        const int figure = wordChoice(ui, "figure", kFigures, static_cast<int>(view.memberFigure));
        changed = changed || figure != static_cast<int>(view.memberFigure);
        view.memberFigure = static_cast<MemberFigure>(figure);
    }
    if (ui.coarse || context.state.penSeen) {
        if (toggle(ui, "Finger draws", view.fingerDraws)) {
            view.fingerDraws = !view.fingerDraws;
            changed = true;
        }
    }
    if (toggle(ui, "Present in large type", view.presenting)) {
        view.presenting = !view.presenting;
        changed = true;
        context.requests.fullScreen = view.presenting;
    }
    rule(ui);
    smallPrint(ui, "Theme");
    const int theme = wordChoice(ui, "theme", kThemes, static_cast<int>(view.theme));
    changed = changed || theme != static_cast<int>(view.theme);
    view.theme = static_cast<ThemeChoice>(theme);
    if (context.layout.narrow) { // the header has no room for it
        rule(ui);
        if (button(ui, "Fit the drawing", {.icon = Icon::Fit, .full = true})) {
            context.actions.push_back(ZoomToFit{});
            ImGui::CloseCurrentPopup();
        }
    }
    if (changed) {
        context.actions.push_back(SetView{view});
    }
}

} // namespace

void viewMenu(PanelContext& context) {
    const Ui& ui = context.ui;
    const bool open = ImGui::IsPopupOpen("view menu");
    if (button(ui, "View##view", {.icon = Icon::View, .showText = false, .selected = open})) {
        ImGui::OpenPopup("view menu");
    }
    // On a phone the menu is as wide as the page allows, else under its button.
    const float right =
        context.layout.narrow ? ui.px(context.viewport.size.x - 4) : ImGui::GetItemRectMax().x;
    const ImVec2 under{right, ui.px(context.layout.header.size.y + 2)};
    ImGui::SetNextWindowPos(under, ImGuiCond_Always, {1, 0});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {ui.px(14), ui.px(12)});
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {ui.px(4), ui.px(2)});
    if (ImGui::BeginPopup("view menu", ImGuiWindowFlags_NoMove)) {
        menu(context);
        ImGui::EndPopup();
    }
    ImGui::PopStyleVar(2);
}

} // namespace gusset
