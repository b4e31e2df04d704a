#include "app/fields/load_cells.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/list_field.hpp"
#include "phrases/columns.hpp"
#include "phrases/model.hpp"

#include <array>
#include <string>

namespace gusset {
namespace {

std::string perLength(const Units& units) {
    const std::string force = symbolOf(units.force);
    const std::string length = symbolOf(units.length);
    return force.empty() || length.empty() ? force : force + "/" + length;
}

void axles(PanelContext& context, int row) {
    const Truss& truss = context.state.truss;
    const MovingLoad& load = truss.moving[static_cast<std::size_t>(row)];
    const UnitHeading at = headOf(context, phrase::kBehindFirst, symbolOf(truss.units.length));
    const UnitHeading force = headOf(context, phrase::kPushesDown, symbolOf(truss.units.force));
    const std::array columns{Column{{words(context, phrase::kCellAxle)}, 48, 0.4},
                             Column{at, 112, 1, Align::Right}, Column{force, 104, 1, Align::Right},
                             Column{{}, kTouchTarget, 0}};
    Table table(context.ui, ("axles" + std::to_string(row)).c_str(), columns);
    table.header();
    const int count = static_cast<int>(load.axles.size());
    for (int axle = 0; axle <= count; ++axle) {
        table.row({.id = axle});
        table.text(0, axle < count ? std::to_string(axle + 1) : "+", {context.ui.palette->muted});
        listField(context, table.cell(1), {ListFieldKind::AxleAt, row, axle},
                  words(context, phrase::kAxlePlace));
        listField(context, table.cell(2), {ListFieldKind::AxleForce, row, axle}, "");
        if (axle < count && canRemoveAxle(load) &&
            trashButton(context.ui, table.cell(3),
                        wordsAs(context, phrase::kRemoveAxle, "##") + std::to_string(axle))) {
            context.actions.push_back(Commit{removeAxle(truss, row, axle)});
        }
    }
}

void spread(PanelContext& context, int row) {
    const Truss& truss = context.state.truss;
    const UnitHeading size = headOf(context, phrase::kSpreadLoadDown, perLength(truss.units));
    const UnitHeading length = headOf(context, phrase::kItsLength, symbolOf(truss.units.length));
    const std::array columns{Column{size, 150, 1, Align::Right},
                             Column{length, 130, 1, Align::Right}};
    Table table(context.ui, ("spread" + std::to_string(row)).c_str(), columns);
    table.header();
    table.row({.id = row});
    listField(context, table.cell(0), {ListFieldKind::SpreadForce, row, 0},
              words(context, phrase::kNone));
    listField(context, table.cell(1), {ListFieldKind::SpreadLength, row, 0},
              words(context, phrase::kLongAsWorst));
}

void movingLoad(PanelContext& context, int row, bool withPath) {
    const Truss& truss = context.state.truss;
    const std::array columns{Column{{words(context, phrase::kCellName)}, 120, 1},
                             Column{{}, kTouchTarget, 0}};
    ImGui::PushID(row);
    {
        Table table(context.ui, "moving load", columns);
        table.row({.id = row});
        listField(context, table.cell(0), {ListFieldKind::MovingName, row, 0},
                  words(context, phrase::kCellName));
        if (trashButton(context.ui, table.cell(1), words(context, phrase::kRemoveMoving))) {
            context.actions.push_back(Commit{removeMovingLoad(truss, row)});
        }
    }
    if (withPath) {
        smallPrint(context.ui,
                   sayPlain(*context.state.book, phrase::kAlongPath,
                            {{"path",
                              pathName(truss, truss.moving[static_cast<std::size_t>(row)].path)}}));
    }
    axles(context, row);
    spread(context, row);
    ImGui::PopID();
    gap(context.ui, 8);
}

} // namespace

void movingLoadsOn(PanelContext& context, const std::vector<JointId>& path) {
    const Truss& truss = context.state.truss;
    for (std::size_t i = 0; i < truss.moving.size(); ++i) {
        if (truss.moving[i].path == path) {
            movingLoad(context, static_cast<int>(i), false);
        }
    }
    if (button(context.ui, words(context, phrase::kAddMoving), {.icon = Icon::Plus})) {
        context.actions.push_back(Commit{addMovingLoad({*context.state.book, truss}, path)});
    }
}

void movingTables(PanelContext& context) {
    const Truss& truss = context.state.truss;
    countedHeading(context, phrase::kHeadMoving, static_cast<int>(truss.moving.size()));
    for (std::size_t i = 0; i < truss.moving.size(); ++i) {
        movingLoad(context, static_cast<int>(i), true);
    }
    smallPrint(context.ui, words(context, phrase::kWhereMovingAdded));
}

} // namespace gusset
