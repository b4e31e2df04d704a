#include "panels/frame/parts.hpp"
#include "panels/frame/tabs.hpp"

#include <array>
#include <span>

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
constexpr std::array kMemberFigures{"force", "stress", "use"}; // in the order of MemberFigure
constexpr std::array kThemes{"System", "Paper", "Dark", "Sun"};

void layer(PanelContext& context, const char* label, bool View::*shown) {
    const bool now = context.state.view.*shown;
    if (toggle(context.ui, label, now)) {
        context.actions.push_back(Set{shown, !now});
    }
}

template <class Choice>
void choice(PanelContext& context, const char* id, std::span<const char* const> words,
            Choice View::*setting) {
    const int now = static_cast<int>(context.state.view.*setting);
    const int chosen = wordChoice(context.ui, id, words, now);
    if (chosen != now) {
        context.actions.push_back(Set{setting, static_cast<Choice>(chosen)});
    }
}

void menu(PanelContext& context) {
    const Ui& ui = context.ui;
    const View& view = context.state.view;
    smallPrint(ui, "On the board");
    for (const Layer& each : kLayers) {
        layer(context, each.label, each.shown);
    }
    if (view.showForces) {
        smallPrint(ui, "Members are labelled by their");
        choice(context, "figure", kMemberFigures, &View::memberFigure);
    }
    if (ui.coarse || context.state.penSeen) {
        layer(context, "Finger draws", &View::fingerDraws);
    }
    if (toggle(ui, "Present in large type", view.presenting)) {
        context.actions.push_back(Set{&View::presenting, !view.presenting});
        context.requests.fullScreen = !view.presenting;
    }
    rule(ui);
    smallPrint(ui, "Theme");
    choice(context, "theme", kThemes, &View::theme);
    if (context.layout.narrow) { // the header has no room for it
        rule(ui);
        if (button(ui, "Fit the drawing", {.icon = Icon::Fit, .full = true})) {
            context.actions.push_back(ZoomToFit{});
            ImGui::CloseCurrentPopup();
        }
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
