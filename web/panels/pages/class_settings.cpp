// The conventions in which the working is written, to be chosen. They stand in the model, so that a
// link brings them along.
#include "panels/frame/parts.hpp"
#include "panels/frame/tabs.hpp"

#include <algorithm>
#include <array>
#include <span>
#include <string>

namespace gusset {
namespace {

// A question of the class settings: its words stand for the values 0, 1, … of an enumeration.
template <class Value>
void ask(const Ui& ui, const char* question, std::span<const char* const> words, Value& value) {
    gap(ui, 4);
    smallPrint(ui, question);
    value = static_cast<Value>(wordChoice(ui, question, words, static_cast<int>(value)));
}

constexpr std::array kTurns{"clockwise", "anticlockwise"};
constexpr std::array kAngles{"one angle", "cosines", "slopes"};
constexpr std::array kAxes{"H and V", "x and y"};
constexpr std::array kSymbols{"F with AB below", "AB", "S₁"};
constexpr std::array kSenses{"away from the joint", "in the expected sense"};
constexpr std::array kForms{"exact numbers", "decimals", "significant figures"};
constexpr std::array kSigns{"point: 2.5", "comma: 2,5"};
constexpr std::array kCarried{"in full", "rounded, as on paper"};
constexpr int kMostFigures = 6;

// How many decimals or figures; exact numbers have decimals beside them.
void figures(const Ui& ui, ClassSettings& settings) {
    ask(ui, "Numbers are given as", kForms, settings.form);
    const int least = settings.form == NumberForm::Significant ? 1 : 0;
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
    smallPrint(ui, "How the working is written. The results stay the same.");
    ClassSettings settings = context.state.truss.classSettings;
    ask(ui, "Moments are positive", kTurns, settings.moments);
    ask(ui, "Inclined forces are resolved by", kAngles, settings.angles);
    ask(ui, "Directions are called", kAxes, settings.axes);
    ask(ui, "A member force is written", kSymbols, settings.symbols);
    ask(ui, "Unknown forces are drawn", kSenses, settings.senses);
    figures(ui, settings);
    int sign = settings.decimalSign == ',' ? 1 : 0;
    ask(ui, "Decimals follow a", kSigns, sign);
    settings.decimalSign = sign == 1 ? ',' : '.';
    ask(ui, "From one step to the next values go", kCarried, settings.carry);
    ImGui::PopStyleVar();
    if (settings != context.state.truss.classSettings) {
        context.actions.push_back(Commit{SetClassSettings{settings}});
    }
    gap(ui, 16);
    endScroll();
}

} // namespace gusset
