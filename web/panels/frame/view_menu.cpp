#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/frame.hpp"
#include "phrases/results/checks.hpp"
#include "phrases/results/tables.hpp"

#include <array>
#include <span>

namespace gusset {
namespace {

struct Layer {
    Phrase<> label;
    bool View::*shown;
};
constexpr std::array kLayers{
    Layer{phrase::kMemberForces, &View::showForces},
    Layer{phrase::kReactions, &View::showReactions},
    Layer{phrase::kDeflectedShape, &View::showMovement},
    Layer{phrase::kDimensions, &View::showDimensions},
    Layer{phrase::kWidthByForce, &View::widthByForce},
    Layer{phrase::kLargestForces, &View::showLargest},
    Layer{phrase::kSnapToGrid, &View::snapToGrid},
};
// In the order of MemberFigure.
constexpr std::array<Phrase<>, 3> kMemberFigures{phrase::kCellForce, phrase::kCellStress,
                                                 phrase::kColumnUse};
constexpr std::array<Phrase<>, 4> kThemes{phrase::kThemeSystem, phrase::kThemePaper,
                                          phrase::kThemeDark, phrase::kThemeBright};

void layer(PanelContext& context, Phrase<> label, bool View::*shown) {
    const bool now = context.state.view.*shown;
    if (toggle(context.ui, words(context, label), now)) {
        context.actions.push_back(Set{shown, !now});
    }
}

template <class Choice>
void choice(PanelContext& context, const char* id, std::span<const char* const> choices,
            Choice View::*setting) {
    const int now = static_cast<int>(context.state.view.*setting);
    const int chosen = wordChoice(context.ui, id, choices, now);
    if (chosen != now) {
        context.actions.push_back(Set{setting, static_cast<Choice>(chosen)});
    }
}

void menu(PanelContext& context) {
    const Ui& ui = context.ui;
    const View& view = context.state.view;
    smallPrint(ui, words(context, phrase::kOnTheBoard));
    for (const Layer& each : kLayers) {
        layer(context, each.label, each.shown);
    }
    if (view.showForces) {
        smallPrint(ui, words(context, phrase::kLabelledBy));
        choice(context, "figure", words(context, kMemberFigures), &View::memberFigure);
    }
    if (ui.coarse || context.state.penSeen) {
        layer(context, phrase::kFingerDraws, &View::fingerDraws);
    }
    if (!context.derived.link.empty() &&
        button(ui, words(context, phrase::kPresent), {.full = true})) {
        context.requests.leaveFor = "lesson";
        ImGui::CloseCurrentPopup();
    }
    if (button(ui, words(context, phrase::kPhotograph), {.full = true})) {
        context.requests.leaveFor = "ground";
        ImGui::CloseCurrentPopup();
    }
    rule(ui);
    smallPrint(ui, words(context, phrase::kTheme));
    choice(context, "theme", words(context, kThemes), &View::theme);
    if (context.layout.header.size.x < kNarrowBelow) { // the header has no room for it
        rule(ui);
        if (button(ui, words(context, phrase::kFitDrawing), {.icon = Icon::Fit, .full = true})) {
            context.actions.push_back(ZoomToFit{});
            ImGui::CloseCurrentPopup();
        }
    }
}

} // namespace

void viewMenu(PanelContext& context) {
    const Ui& ui = context.ui;
    const bool open = ImGui::IsPopupOpen("view menu");
    if (button(ui, wordsAs(context, phrase::kView, "##view").c_str(),
               {.icon = Icon::View, .showText = false, .selected = open})) {
        ImGui::OpenPopup("view menu");
    }
    // On a phone the menu is as wide as the page allows, else it is below its button.
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
