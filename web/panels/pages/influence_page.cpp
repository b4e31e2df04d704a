#include "app/derived/result_lists.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/envelope_rows.hpp"
#include "panels/pages/ordered_rows.hpp"
#include "panels/pages/passages.hpp"
#include "phrases/picked.hpp"
#include "phrases/results.hpp"
#include "phrases/results/envelope.hpp"
#include "phrases/results/influence.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/table_view.hpp"
#include "ui/sketch_view.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>

namespace gusset {
namespace {

template <class Value>
void set(PanelContext& context, Value InfluenceView::*setting, std::type_identity_t<Value> to) {
    context.actions.push_back(Set{setting, std::move(to)});
}

// Read at the largest ordinate until another place is chosen.
void readAtLargest(PanelContext& context) { set(context, &InfluenceView::at, std::nullopt); }

// Whether it was on at the start of this frame; a press toggles it.
bool toggled(PanelContext& context, Phrase<> label, bool InfluenceView::*setting) {
    const bool on = context.state.notebook.influence.*setting;
    if (toggle(context.ui, words(context, label), on)) {
        set(context, setting, !on);
    }
    return on;
}

void pathChoice(PanelContext& context) {
    const InfluenceShown& shown = context.derived.influence;
    if (shown.paths.empty()) {
        return;
    }
    std::vector<const char*> names;
    for (const PathOption& option : shown.paths) {
        names.push_back(option.name.c_str());
    }
    smallPrint(context.ui, words(context, phrase::kTravelsAlong));
    const int now = static_cast<int>(shown.chosen);
    const int chosen = wordChoice(context.ui, "path", names, now);
    if (chosen != now) {
        const PathOption& option = shown.paths[static_cast<std::size_t>(chosen)];
        set(context, &InfluenceView::path, option.kind);
        set(context, &InfluenceView::load, option.name);
        readAtLargest(context);
    }
    smallPrint(context.ui, pathName(context.state.truss, shown.paths[shown.chosen].path));
}

void beginPicking(PanelContext& context) {
    std::vector<std::string> picked;
    for (const JointId joint : context.state.selection.joints) {
        if (context.state.selection.joints.size() > 1) {
            picked.push_back(context.state.truss.joints[joint.at()].label);
        }
    }
    if (!picked.empty()) {
        set(context, &InfluenceView::path, PathKind::Picked);
    }
    set(context, &InfluenceView::picked, std::move(picked));
    set(context, &InfluenceView::picking, true);
}

// The path is picked by tapping joints on the board in turn; it starts with those already selected.
void pickButtons(PanelContext& context) {
    const InfluenceView& view = context.state.notebook.influence;
    if (!view.picking) {
        if (button(context.ui, words(context, phrase::kPickPath), {})) {
            beginPicking(context);
        }
        return;
    }
    paragraph(context.ui, words(context, phrase::kTapPath));
    if (button(context.ui, words(context, phrase::kDone), {.primary = true})) {
        set(context, &InfluenceView::picking, false);
    }
    ImGui::SameLine();
    std::string picked;
    for (const std::string& label : view.picked) {
        picked += (picked.empty() ? "" : ", ") + label;
    }
    besideButtons(context.ui, picked.empty() ? words(context, phrase::kNoneYet) : picked);
}

void directionChoice(PanelContext& context) {
    constexpr std::array kWays{phrase::kEffectUp, phrase::kEffectRight};
    if (!context.derived.influence.canTurn) {
        return;
    }
    const int now = context.state.notebook.influence.horizontal ? 1 : 0;
    const int chosen = wordChoice(context.ui, "way", words(context, kWays), now);
    if (chosen != now) {
        set(context, &InfluenceView::horizontal, chosen == 1);
        readAtLargest(context);
    }
}

void plot(PanelContext& context) {
    const InfluenceShown& shown = context.derived.influence;
    const auto read = drawSketch(context.ui, "influence line", shown.sketch, {.readable = true});
    if (read) {
        const std::optional<double> at = placeUnder(context.state.truss, shown, read->x);
        if (at != context.state.notebook.influence.at) {
            set(context, &InfluenceView::at, at);
        }
    }
    paragraph(context.ui, shown.reading, Ink::Accent);
}

void ordinates(PanelContext& context) {
    const InfluenceShown& shown = context.derived.influence;
    const Truss& truss = context.state.truss;
    const bool exact = !shown.report->exact.empty();
    const UnitHeading from{headOfDistance({*context.state.book, truss}),
                           words(context, phrase::kColumnFromStart)};
    const UnitHeading ordinate{headOfOrdinate({*context.state.book, truss}, *shown.report),
                               words(context, phrase::kColumnOrdinate)};
    const char* joint = words(context, phrase::kCellJoint);
    const char* exactly = words(context, phrase::kColumnExactly);
    const std::vector<OrdinateRow>& rows = shown.ordinates;
    std::vector<Column> columns{
        Column{{joint}, 56, 1, Align::Left, 0, false, longestOf(rows, &OrdinateRow::name)},
        Column{from, 110, 1, Align::Right, 1, false, longestOf(rows, &OrdinateRow::from)},
        Column{ordinate, 84, 1, Align::Right, 2, true, longestOf(rows, &OrdinateRow::ordinate)}};
    if (exact) {
        columns.push_back(Column{
            {exactly}, 84, 1, Align::Right, -1, false, longestOf(rows, &OrdinateRow::exact)});
    }
    sectionHeading(context.ui, words(context, phrase::kOrdinates));
    const std::vector<int> places = orderedOrdinates(context.state, context.derived);
    listSearch(context, SortedTable::Ordinates, static_cast<int>(rows.size()),
               static_cast<int>(places.size()), phrase::kFindJoint);
    Table table(context.ui, "ordinates", columns);
    listHeader(context, table, SortedTable::Ordinates, phrase::kOrdinates);
    const Table::TextLook plain{context.ui.palette->ink};
    drawOrdered(table, rows, places, [&](const OrdinateRow& row, int place) {
        const bool here = row.at == shown.at;
        const auto state = table.row({.id = place, .selected = here, .pressable = true});
        if (state.pressed) {
            set(context, &InfluenceView::at, row.at);
        }
        table.text(0, row.name, plain);
        table.text(1, row.from, plain);
        table.text(2, row.ordinate, plain);
        if (exact) {
            table.text(3,
                       table.fits(3, row.exact) ? row.exact : words(context, phrase::kLongFraction),
                       plain);
        }
    });
    gap(context.ui, 4);
    if (shown.jobs.exact.made) {
        progressOf(context, shown.jobs.exact);
    }
    paragraph(context.ui, shown.areas);
    for (const std::string& assumed : shown.assumed) {
        smallPrint(context.ui, assumed);
    }
}

void movingResults(PanelContext& context) {
    const InfluenceShown& shown = context.derived.influence;
    sectionHeading(context.ui, words(context, phrase::kMovingHeading));
    for (const std::string& line : shown.moving) {
        paragraph(context.ui, line);
    }
    gap(context.ui, 4);
    movingLoadsOn(context, shown.report->path);
    if (shown.moving.empty()) {
        return;
    }
    if (!toggled(context, phrase::kAllUnderThese, &InfluenceView::members)) {
        return;
    }
    if (!hasMembers(context.state, shown)) {
        progressOf(context, shown.jobs.members);
        return;
    }
    for (std::size_t i = 0; i < shown.members.loads.size(); ++i) {
        const MembersUnder& under = shown.members.loads[i];
        paragraph(context.ui, under.caption);
        envelopeTable(context, ("under" + std::to_string(i)).c_str(), SortedTable::UnderMoving,
                      under.rows);
        smallPrint(context.ui, words(context, phrase::kAxleExplained));
    }
}

// How the line is found by hand: a unit load at each joint in turn.
void byHand(PanelContext& context) {
    if (!toggled(context, phrase::kWorkingByHand, &InfluenceView::byHand)) {
        return;
    }
    const InfluenceShown& shown = context.derived.influence;
    if (!hasByHand(context.state, shown)) {
        progressOf(context, shown.jobs.byHand);
        return;
    }
    int id = 0;
    for (const Passage& passage : shown.byHand.passages) {
        drawPassage(context.ui, id++, passage);
        gap(context.ui, 8);
    }
}

} // namespace

void influencePage(PanelContext& context) {
    const InfluenceShown& shown = context.derived.influence;
    beginScroll(context.ui, "influence");
    gap(context.ui, 4);
    pathChoice(context);
    pickButtons(context);
    gap(context.ui, 4);
    if (!shown.report) {
        if (shown.says.empty()) {
            progressOf(context, shown.jobs.path);
        } else {
            paragraph(context.ui, shown.says, Ink::Warning);
        }
        directionChoice(context);
    } else {
        paragraph(context.ui, shown.title);
        sentences(context, shown.warnings, shown.warnings);
        directionChoice(context);
        plot(context);
        smallPrint(context.ui, words(context, phrase::kTapForLine));
        ordinates(context);
        byHand(context);
        movingResults(context);
    }
    gap(context.ui, 16);
    endScroll();
}

} // namespace gusset
