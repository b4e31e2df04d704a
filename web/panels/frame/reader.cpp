// Reading mode: the header and the buttons below the working.
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/working.hpp"

#include <algorithm>

namespace gusset {

void setStep(PanelContext& context, int step) {
    context.actions.push_back(Set{&NotebookState::step, step});
}

void previousStep(PanelContext& context, const StepPlace& place) {
    if (button(context.ui, words(context, phrase::kPreviousStep),
               {.icon = Icon::Previous, .showText = false, .enabled = place.step > 0})) {
        setStep(context, place.step - 1);
    }
}

void nextStep(PanelContext& context, const StepPlace& place, const ButtonLook& look) {
    ButtonLook next = look;
    next.icon = Icon::Next;
    next.enabled = place.step + 1 < place.count;
    next.primary = true;
    if (button(context.ui, words(context, phrase::kNextStep), next)) {
        setStep(context, place.step + 1);
    }
}

std::string stepOfMany(const PanelContext& context, const StepPlace& place) {
    return sayPlain(*context.state.book, phrase::kOneOfMany,
                    {{"i", place.step + 1}, {"n", place.count}});
}

void allSteps(PanelContext& context) {
    const bool whole = context.state.notebook.wholeWorking;
    if (toggle(context.ui, words(context, phrase::kAllSteps), whole)) {
        context.actions.push_back(Set{&NotebookState::wholeWorking, !whole});
    }
}

void readerHeader(PanelContext& context) {
    if (button(context.ui, words(context, phrase::kBackToBoard), {.icon = Icon::Previous})) {
        context.actions.push_back(LeaveWorking{});
    }
    if (stepPlace(context.state, context.derived)) {
        ImGui::SameLine();
        allSteps(context);
    }
}

void readerPanel(PanelContext& context) {
    const Ui& ui = context.ui;
    const Rect& place = context.layout.reader;
    if (place.size.x <= 0) {
        return;
    }
    const auto side = static_cast<float>(notebookMargin(context.layout));
    beginSheet(ui, "reader", place, {.padding = {side, 6}});
    const ImVec2 low = ImGui::GetWindowPos();
    ImGui::GetWindowDrawList()->AddRectFilled(
        low, {low.x + ImGui::GetWindowWidth(), low.y + std::max(1.0f, ui.px(1))},
        packed(ui.palette->edge));
    undoButton(context);
    if (const auto at = stepPlace(context.state, context.derived)) {
        ImGui::SameLine(0, ui.px(2));
        previousStep(context, *at);
        ImGui::SameLine();
        besideButtons(ui, stepOfMany(context, *at));
        ImGui::SameLine();
        nextStep(context, *at, {.full = true});
    }
    endSheet();
}

} // namespace gusset
