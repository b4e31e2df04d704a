// Sections and materials, as tables to type in.
#include "app/fields/cell_list.hpp"
#include "core/number.hpp"
#include "model/catalogue/section_properties.hpp"
#include "model/catalogue/usual_materials.hpp"
#include "panels/frame/parts.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/listed.hpp"

#include <array>
#include <string>

namespace gusset {
namespace {

// A row that stands for no thing of the board.
void typedRow(PanelContext& context, Table& table, CellTable of, int row) {
    table.row({.id = row});
    for (int column = 0; column < columnsOf(of); ++column) {
        cellField(context, table, column, {of, row, column});
    }
}

std::string areaText(const Truss& truss, const Section& section) {
    const std::optional<double> area = propertiesOf(section).area;
    return area ? formatNumber(*area,
                               {NumberForm::Significant, 4, truss.classSettings.decimalSign, false})
                : "";
}

// Members that have no section yet, or those that are picked.
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

void useButtons(PanelContext& context) {
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

void sections(PanelContext& context) {
    const Truss& truss = context.state.truss;
    const std::string unit = symbolOf(truss.units.section);
    const std::string area = unit.empty() ? "A" : "A, " + unit + "²";
    const std::array columns{Column{"section", 58, 1, Align::Left, column::kSectionId},
                             Column{"material", 60, 1, Align::Left, column::kSectionMaterial},
                             Column{"made as", 118, 3, Align::Left, column::kSectionMake},
                             Column{area, 62, 0.6, Align::Right, kOrderByArea},
                             Column{"", kTouchTarget, 0}};
    sectionHeading(context.ui, "Sections");
    const int rows = rowsOf(truss, CellTable::Sections);
    const RowOrder order = shownRows(context.state, CellTable::Sections);
    listSearch(context, ListedTable::Sections, rows, static_cast<int>(order.size()) - 1,
               "find a section");
    Table table(context.ui, "sections", columns);
    listHeader(context, table, ListedTable::Sections, "Sections");
    for (const int row : order) {
        typedRow(context, table, CellTable::Sections, row);
        if (row < rows) {
            table.text(3, areaText(truss, truss.sections[static_cast<std::size_t>(row)]),
                       {context.ui.palette->muted});
            if (trashButton(context.ui, table.cell(4), "Remove##section" + std::to_string(row))) {
                context.actions.push_back(Commit{RemoveSection{row}});
            }
        }
    }
    smallPrint(context.ui,
               "Made as: A 1200, r 25, or round D, chs D × t, shs B × t, rhs H × B × t, "
               "angle H × B × t, flat B × t, timber B × H.");
    useButtons(context);
}

bool hasMaterial(const Truss& truss, const Material& material) {
    for (const Material& other : truss.materials) {
        if (other.id == material.id) {
            return true;
        }
    }
    return false;
}

void usualMaterials(PanelContext& context) {
    const Truss& truss = context.state.truss;
    const int end = rowsOf(truss, CellTable::Materials);
    const std::array usual{usualSteel(truss.units), usualTimber(truss.units)};
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
}

void materials(PanelContext& context) {
    const Truss& truss = context.state.truss;
    const std::string modulus = withUnit("E", symbolOf(truss.units.stress));
    const std::array columns{Column{"material", 58, 1, Align::Left, column::kMaterialId},
                             Column{modulus, 72, 1, Align::Right, column::kMaterialE},
                             Column{"strength", 60, 1, Align::Right, column::kMaterialStrength},
                             Column{"kg/m³", 50, 1, Align::Right, column::kMaterialDensity},
                             Column{"α, 10⁻⁶/K", 70, 1, Align::Right, column::kMaterialAlpha},
                             Column{"", kTouchTarget, 0}};
    sectionHeading(context.ui, "Materials");
    const int rows = rowsOf(truss, CellTable::Materials);
    const RowOrder order = shownRows(context.state, CellTable::Materials);
    listSearch(context, ListedTable::Materials, rows, static_cast<int>(order.size()) - 1,
               "find a material");
    Table table(context.ui, "materials", columns);
    listHeader(context, table, ListedTable::Materials, "Materials");
    for (const int row : order) {
        typedRow(context, table, CellTable::Materials, row);
        if (row < rows &&
            trashButton(context.ui, table.cell(5), "Remove##material" + std::to_string(row))) {
            context.actions.push_back(Commit{RemoveMaterial{row}});
        }
    }
    usualMaterials(context);
    smallPrint(context.ui, "Steel: nominal values of EN 1993-1-1; timber: C24 of EN 338. What is "
                           "built with has its own certificate.");
}

} // namespace

void propertyTables(PanelContext& context) {
    sections(context);
    materials(context);
}

} // namespace gusset
