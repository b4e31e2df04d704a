#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/model.hpp"

#include <algorithm>
#include <array>
#include <string>

namespace gusset {
namespace {

constexpr std::array kForceUnits{ForceUnit::kN,  ForceUnit::N,   ForceUnit::MN,
                                 ForceUnit::kip, ForceUnit::lbf, ForceUnit::Plain};
constexpr std::array kLengthUnits{LengthUnit::m,  LengthUnit::cm, LengthUnit::mm,
                                  LengthUnit::ft, LengthUnit::in, LengthUnit::Plain};

template <class Unit, std::size_t N>
Unit unitChoice(const PanelContext& context, const char* id, const std::array<Unit, N>& units,
                Unit now) {
    std::array<const char*, N> symbols{};
    std::transform(units.begin(), units.end(), symbols.begin(), [&](Unit unit) {
        return unit == Unit::Plain ? words(context, phrase::kNone) : symbolOf(unit);
    });
    const auto place = std::find(units.begin(), units.end(), now) - units.begin();
    const int chosen = wordChoice(context.ui, id, symbols, static_cast<int>(place));
    return units[static_cast<std::size_t>(chosen)];
}

void units(PanelContext& context) {
    const Ui& ui = context.ui;
    const Units& now = context.state.truss.units;
    Units wanted = now;
    sectionHeading(ui, words(context, phrase::kHeadUnits));
    smallPrint(ui, words(context, phrase::kForcesIn));
    wanted.force = unitChoice(context, "force unit", kForceUnits, now.force);
    smallPrint(ui, words(context, phrase::kLengthsIn));
    wanted.length = unitChoice(context, "length unit", kLengthUnits, now.length);
    ImGuiStorage& memory = *ImGui::GetStateStorage();
    const ImGuiID slot = ImGui::GetID("keep the numbers");
    const bool keeps = memory.GetBool(slot);
    if (toggle(ui, words(context, phrase::kKeepNumbers), keeps)) {
        memory.SetBool(slot, !keeps);
    }
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
