#include "panels/parts.hpp"
#include "panels/tabs.hpp"

#include <algorithm>
#include <array>
#include <span>
#include <string>

namespace gusset {
namespace {

constexpr std::array kForceUnits{ForceUnit::kN,  ForceUnit::N,   ForceUnit::MN,
                                 ForceUnit::kip, ForceUnit::lbf, ForceUnit::Plain};
constexpr std::array kForceWords{"kN", "N", "MN", "kip", "lbf", "none"};
constexpr std::array kLengthUnits{LengthUnit::m,  LengthUnit::cm, LengthUnit::mm,
                                  LengthUnit::ft, LengthUnit::in, LengthUnit::Plain};
constexpr std::array kLengthWords{"m", "cm", "mm", "ft", "in", "none"};

template <class Unit, std::size_t N>
int placeOf(const std::array<Unit, N>& units, Unit unit) {
    return static_cast<int>(std::find(units.begin(), units.end(), unit) - units.begin());
}

void units(PanelContext& context) {
    const Ui& ui = context.ui;
    const Units& now = context.state.truss.units;
    sectionHeading(ui, "Units");
    smallPrint(ui, "Forces in");
    const int force = wordChoice(ui, "force unit", kForceWords, placeOf(kForceUnits, now.force));
    smallPrint(ui, "Lengths in");
    const int length =
        wordChoice(ui, "length unit", kLengthWords, placeOf(kLengthUnits, now.length));
    ImGuiStorage& memory = *ImGui::GetStateStorage();
    const ImGuiID slot = ImGui::GetID("keep the numbers");
    const bool keeps = memory.GetBool(slot);
    if (toggle(ui, "Keep the numbers when the unit changes", keeps)) {
        memory.SetBool(slot, !keeps);
    }
    Units wanted = now;
    wanted.force = kForceUnits[static_cast<std::size_t>(force)];
    wanted.length = kLengthUnits[static_cast<std::size_t>(length)];
    if (wanted != now) {
        // There is no factor between a unit and none.
        const bool plain = wanted.force == ForceUnit::Plain || now.force == ForceUnit::Plain ||
                           wanted.length == LengthUnit::Plain || now.length == LengthUnit::Plain;
        context.actions.push_back(Commit{SetUnits{wanted, !keeps && !plain}});
    }
}

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
constexpr std::array kForms{"decimals", "significant figures"};
constexpr int kMostFigures = 6;

void figures(const Ui& ui, ClassSettings& settings) {
    const bool decimals = settings.form != NumberForm::Significant;
    int form = decimals ? 0 : 1;
    ask(ui, "Numbers are given to", kForms, form);
    settings.form = form == 0 ? NumberForm::Decimals : NumberForm::Significant;
    if (button(ui, "−##fewer", {.enabled = settings.digits > (form == 0 ? 0 : 1)})) {
        --settings.digits;
    }
    ImGui::SameLine();
    besideButtons(ui, std::to_string(settings.digits));
    ImGui::SameLine();
    if (button(ui, "+##more", {.enabled = settings.digits < kMostFigures})) {
        ++settings.digits;
    }
    settings.digits = std::clamp(settings.digits, form == 0 ? 0 : 1, kMostFigures);
}

void classSettings(PanelContext& context) {
    const Ui& ui = context.ui;
    sectionHeading(ui, "Class settings");
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {ui.px(8), 0});
    smallPrint(ui, "How the working is written. The results stay the same.");
    ClassSettings settings = context.state.truss.classSettings;
    ask(ui, "Moments are positive", kTurns, settings.moments);
    ask(ui, "Inclined forces are resolved by", kAngles, settings.angles);
    ask(ui, "Directions are called", kAxes, settings.axes);
    ask(ui, "A member force is written", kSymbols, settings.symbols);
    figures(ui, settings);
    ImGui::PopStyleVar();
    if (settings != context.state.truss.classSettings) {
        context.actions.push_back(Commit{SetClassSettings{settings}});
    }
}

} // namespace

void modelSettings(PanelContext& context) {
    units(context);
    classSettings(context);
}

} // namespace gusset
