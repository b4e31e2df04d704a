// The conventions in which the working is written. They are stored in the model, so that a link
// carries them.
#include "app/fields/questions.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/working.hpp"

#include <algorithm>
#include <span>
#include <string>
#include <vector>

namespace gusset {
namespace {

void ask(const PanelContext& context, const ClassQuestion& question, ClassSettings& settings) {
    gap(context.ui, 4);
    const char* const asked = words(context, question.asks);
    smallPrint(context.ui, asked);
    std::vector<const char*> answers;
    for (const Phrase<> answer : question.answers) {
        answers.push_back(words(context, answer));
    }
    const int now = question.now(settings);
    const int chosen = wordChoice(context.ui, asked, answers, now);
    if (chosen != now) {
        question.set(settings, chosen);
    }
}

// The number of decimals or significant figures; exact numbers have decimals beside them.
void figures(const PanelContext& context, ClassSettings& settings) {
    const Ui& ui = context.ui;
    const int least = leastFigures(settings);
    if (button(ui, "−##fewer", {.enabled = settings.digits > least})) {
        --settings.digits;
    }
    ImGui::SameLine();
    besideButtons(ui, std::to_string(settings.digits));
    ImGui::SameLine();
    if (button(ui, "+##more", {.enabled = settings.digits < kMostFigures})) {
        ++settings.digits;
    }
    settings.digits = std::clamp(settings.digits, least, kMostFigures);
}

} // namespace

void classSettings(PanelContext& context) {
    beginScroll(context.ui, "class settings");
    const Ui& ui = context.ui;
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {ui.px(8), 0});
    smallPrint(ui, words(context, phrase::kHowWritten));
    ClassSettings settings = context.state.truss.classSettings;
    const std::span<const ClassQuestion> questions = classQuestions();
    for (std::size_t i = 0; i < questions.size(); ++i) {
        ask(context, questions[i], settings);
        if (i == kBeforeFigures) {
            figures(context, settings);
        }
    }
    ImGui::PopStyleVar();
    if (settings != context.state.truss.classSettings) {
        context.actions.push_back(Commit{SetClassSettings{settings}});
    }
    gap(ui, 16);
    endScroll();
}

} // namespace gusset
