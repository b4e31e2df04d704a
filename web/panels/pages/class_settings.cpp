// The conventions in which the working is written. They are stored in the model, so that a link
// carries them.
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/working.hpp"

#include <algorithm>
#include <array>
#include <string>

namespace gusset {
namespace {

// A choice in the class settings: its words correspond to the values 0, 1, … of an enumeration.
template <class Value, std::size_t Count>
void ask(const PanelContext& context, Phrase<> question, const std::array<Phrase<>, Count>& answers,
         Value& value) {
    gap(context.ui, 4);
    const char* const asked = words(context, question);
    smallPrint(context.ui, asked);
    value = static_cast<Value>(
        wordChoice(context.ui, asked, words(context, answers), static_cast<int>(value)));
}

constexpr std::array<Phrase<>, 2> kTurns{phrase::kClockwise, phrase::kAnticlockwise};
constexpr std::array<Phrase<>, 3> kAngles{phrase::kByOneAngle, phrase::kByCosines,
                                          phrase::kBySlopes};
constexpr std::array<Phrase<>, 2> kAxes{phrase::kAxesHV, phrase::kAxesXY};
constexpr std::array<Phrase<>, 3> kSymbols{phrase::kAsForceBelow, phrase::kAsEnds,
                                           phrase::kAsNumbered};
constexpr std::array<Phrase<>, 2> kSenses{phrase::kDrawnAway, phrase::kDrawnExpected};
constexpr std::array<Phrase<>, 2> kEquations{phrase::kSymbolsFirst, phrase::kNumbersOnly};
constexpr std::array<Phrase<>, 3> kForms{phrase::kExactNumbers, phrase::kDecimals,
                                         phrase::kSignificant};
constexpr std::array<Phrase<>, 2> kSigns{phrase::kPoint, phrase::kComma};
constexpr std::array<Phrase<>, 2> kCarried{phrase::kInFull, phrase::kRounded};
constexpr int kMostFigures = 6;

// The number of decimals or significant figures; exact numbers have decimals beside them.
void figures(const PanelContext& context, ClassSettings& settings) {
    const Ui& ui = context.ui;
    ask(context, phrase::kNumbersGiven, kForms, settings.form);
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
    smallPrint(ui, words(context, phrase::kHowWritten));
    ClassSettings settings = context.state.truss.classSettings;
    ask(context, phrase::kMomentsPositive, kTurns, settings.moments);
    ask(context, phrase::kResolvedBy, kAngles, settings.angles);
    ask(context, phrase::kDirectionsCalled, kAxes, settings.axes);
    ask(context, phrase::kForceWritten, kSymbols, settings.symbols);
    ask(context, phrase::kUnknownDrawn, kSenses, settings.senses);
    ask(context, phrase::kEquationsBegin, kEquations, settings.equations);
    figures(context, settings);
    int sign = settings.decimalSign == ',' ? 1 : 0;
    ask(context, phrase::kDecimalsFollow, kSigns, sign);
    settings.decimalSign = sign == 1 ? ',' : '.';
    ask(context, phrase::kValuesGo, kCarried, settings.carry);
    ImGui::PopStyleVar();
    if (settings != context.state.truss.classSettings) {
        context.actions.push_back(Commit{SetClassSettings{settings}});
    }
    gap(ui, 16);
    endScroll();
}

} // namespace gusset
