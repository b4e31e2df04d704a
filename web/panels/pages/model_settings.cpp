#include "panels/frame/parts.hpp"
#include "panels/frame/tabs.hpp"

#include <algorithm>
#include <array>
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
        // There is no conversion factor between a unit and no unit.
        const bool plain = wanted.force == ForceUnit::Plain || now.force == ForceUnit::Plain ||
                           wanted.length == LengthUnit::Plain || now.length == LengthUnit::Plain;
        context.actions.push_back(Commit{SetUnits{wanted, !keeps && !plain}});
    }
}

} // namespace

void modelSettings(PanelContext& context) { units(context); }

} // namespace gusset
