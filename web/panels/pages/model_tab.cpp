#include "panels/frame/tabs.hpp"
#include "panels/pages/model_table.hpp"
#include "phrases/model.hpp"

#include "statics/moving/load_paths.hpp"

#include <algorithm>
#include <vector>

namespace gusset {
namespace {

constexpr double kFirstPerLength = -1; // downward, to be overwritten

// For loads that the load tool doesn't draw.
void belowLoads(PanelContext& context) {
    smallPrint(context.ui, words(context, phrase::kHowLoads));
    const Truss& truss = context.state.truss;
    const bool weighs = std::any_of(truss.loads.begin(), truss.loads.end(), [](const Load& load) {
        return std::holds_alternative<SelfWeight>(load.what);
    });
    if (!weighs && button(context.ui, words(context, phrase::kAddSelfWeight), {})) {
        context.actions.push_back(Commit{AddLoad{{SelfWeight{}, {}, {}}}});
    }
    const std::vector<JointId> chord = fromLeft(truss, context.state.selection.joints);
    if (chord.size() > 1 && button(context.ui, words(context, phrase::kLoadAlongPicked), {})) {
        context.actions.push_back(Commit{AddLoad{{ChordLoad{chord, kFirstPerLength}, {}, {}}}});
    }
}

} // namespace

void modelTab(PanelContext& context) {
    beginScroll(context.ui, "model");
    drawModelTable(context, CellTable::Joints);
    drawModelTable(context, CellTable::Members);
    drawModelTable(context, CellTable::Supports);
    drawModelTable(context, CellTable::Loads, belowLoads);
    propertyTables(context);
    casesTable(context);
    combinationsTable(context);
    movingTables(context);
    modelSettings(context);
    gap(context.ui, 16);
    endScroll();
}

} // namespace gusset
