#include "app/fields/questions.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/model.hpp"

#include <algorithm>
#include <span>
#include <vector>

namespace gusset {
namespace {

template <class Unit>
Unit unitChoice(const PanelContext& context, const char* id, std::span<const Unit> units,
                Unit now) {
    std::vector<const char*> symbols;
    for (const Unit unit : units) {
        symbols.push_back(unit == Unit::Plain ? words(context, phrase::kNone) : symbolOf(unit));
    }
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
    wanted.force = unitChoice(context, "force unit", forceUnits(), now.force);
    smallPrint(ui, words(context, phrase::kLengthsIn));
    wanted.length = unitChoice(context, "length unit", lengthUnits(), now.length);
    ImGuiStorage& memory = *ImGui::GetStateStorage();
    const ImGuiID slot = ImGui::GetID("keep the numbers");
    const bool keeps = memory.GetBool(slot);
    if (toggle(ui, words(context, phrase::kKeepNumbers), keeps)) {
        memory.SetBool(slot, !keeps);
    }
    if (wanted != now) {
        context.actions.push_back(Commit{unitsEdit(now, wanted, keeps)});
    }
}

} // namespace

void modelSettings(PanelContext& context) { units(context); }

} // namespace gusset
