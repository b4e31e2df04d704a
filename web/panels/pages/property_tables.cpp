// Sections and materials, as tables that can be edited.
#include "model/catalogue/usual_materials.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/model_table.hpp"

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
    smallPrint(context.ui,
               "Made as: A 1200, r 25, or round D, chs D × t, shs B × t, rhs H × B × t, "
               "angle H × B × t, flat B × t, timber B × H.");
    const Truss& truss = context.state.truss;
    const std::vector<MemberId> members = membersToDress(context.state);
    if (members.empty() || truss.sections.empty()) {
        return;
    }
    const bool picked = !context.state.selection.members.empty();
    smallPrint(context.ui, picked ? "Give the picked members the section"
                                  : "Give all members that have none the section");
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
    constexpr std::array kWords{"Add steel", "Add timber"};
    bool any = false;
    for (std::size_t i = 0; i < usual.size(); ++i) {
        if (hasMaterial(truss, usual[i])) {
            continue;
        }
        if (any) {
            ImGui::SameLine();
        }
        any = true;
        if (button(context.ui, kWords[i], {})) {
            context.actions.push_back(Commit{SetMaterial{end, usual[i]}});
        }
    }
    smallPrint(context.ui, "Steel: nominal values of EN 1993-1-1; timber: C24 of EN 338. What is "
                           "built with has its own certificate.");
}

} // namespace

void propertyTables(PanelContext& context) {
    drawModelTable(context, CellTable::Sections, belowSections);
    drawModelTable(context, CellTable::Materials, belowMaterials);
}

} // namespace gusset
