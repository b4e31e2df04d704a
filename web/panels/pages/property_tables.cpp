// Sections and materials, as tables that can be edited.
#include "model/catalogue/usual_materials.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/model_table.hpp"
#include "phrases/model.hpp"

#include <array>
#include <string>
#include <vector>

namespace gusset {
namespace {

// Members that have no section yet, or the selected ones.
std::vector<MemberId> membersToDress(const AppState& state) {
    if (!state.selection.members.empty()) {
        return state.selection.members;
    }
    std::vector<MemberId> bare;
    for (std::size_t i = 0; i < state.truss.members.size(); ++i) {
        if (state.truss.members[i].section.empty()) {
            bare.push_back(MemberId{static_cast<int>(i)});
        }
    }
    return bare;
}

void belowSections(PanelContext& context) {
    smallPrint(context.ui, words(context, phrase::kHowSections));
    const Truss& truss = context.state.truss;
    const std::vector<MemberId> members = membersToDress(context.state);
    if (members.empty() || truss.sections.empty()) {
        return;
    }
    const bool picked = !context.state.selection.members.empty();
    smallPrint(context.ui, words(context, picked ? phrase::kGivePicked : phrase::kGiveBare));
    for (const Section& section : truss.sections) {
        if (button(context.ui, (section.id + "##use").c_str(), {})) {
            context.actions.push_back(Commit{UseSection{members, section.id}});
        }
        ImGui::SameLine();
    }
    ImGui::NewLine();
}

bool hasMaterial(const Truss& truss, const Material& material) {
    for (const Material& other : truss.materials) {
        if (other.id == material.id) {
            return true;
        }
    }
    return false;
}

void belowMaterials(PanelContext& context) {
    const Truss& truss = context.state.truss;
    const int end = rowsOf(truss, CellTable::Materials);
    const PhraseBook& book = *context.state.book;
    const std::array usual{usualSteel(book, truss.units), usualTimber(book, truss.units)};
    constexpr std::array kAdds{phrase::kAddSteel, phrase::kAddTimber};
    bool any = false;
    for (std::size_t i = 0; i < usual.size(); ++i) {
        if (hasMaterial(truss, usual[i])) {
            continue;
        }
        if (any) {
            ImGui::SameLine();
        }
        any = true;
        if (button(context.ui, words(context, kAdds[i]), {})) {
            context.actions.push_back(Commit{SetMaterial{end, usual[i]}});
        }
    }
    smallPrint(context.ui, words(context, phrase::kUsualMaterials));
}

} // namespace

void propertyTables(PanelContext& context) {
    drawModelTable(context, CellTable::Sections, belowSections);
    drawModelTable(context, CellTable::Materials, belowMaterials);
}

} // namespace gusset
