#include "app/derived/result_lists.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/envelope_rows.hpp"
#include "panels/pages/ordered_rows.hpp"
#include "phrases/results.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/table_view.hpp"

#include <array>

namespace gusset {
namespace {

void sourceChoice(PanelContext& context) {
    constexpr std::array kSources{phrase::kOverCombinations, phrase::kOverCases};
    smallPrint(context.ui, words(context, phrase::kOver));
    const int now = context.state.notebook.envelopeOfCases ? 1 : 0;
    const int chosen = wordChoice(context.ui, "envelope of", words(context, kSources), now);
    if (chosen != now) {
        context.actions.push_back(Set{&NotebookState::envelopeOfCases, chosen == 1});
    }
}

void openModel(PanelContext& context) {
    if (button(context.ui, words(context, phrase::kOpenModel), {})) {
        turnTo(NotebookTab::Model, context.actions);
    }
}

} // namespace

void envelopeTable(PanelContext& context, const char* id, SortedTable of,
                   const std::vector<EnvelopeRow>& rows) {
    const Palette& palette = *context.ui.palette;
    const char* unit = symbolOf(context.state.truss.units.force);
    const UnitHeading tension = headOf(context, phrase::kLetterTension, unit);
    const UnitHeading compression = headOf(context, phrase::kLetterCompression, unit);
    const char* member = words(context, phrase::kCellMember);
    const auto byWhich = [&](int orders, std::string EnvelopeRow::*text) {
        return Column{.heading = {words(context, phrase::kCellBy)},
                      .least = 88,
                      .orders = orders,
                      .longest = longestOf(rows, text),
                      .font = context.ui.fonts.small};
    };
    const std::array columns{
        Column{{member}, 56, 0.4, Align::Left, 0, false, longestOf(rows, &EnvelopeRow::name)},
        Column{tension, 62, 0.6, Align::Right, 1, true, longestOf(rows, &EnvelopeRow::tension)},
        byWhich(2, &EnvelopeRow::tensionBy),
        Column{compression, 62, 0.6, Align::Right, 3, true,
               longestOf(rows, &EnvelopeRow::compression)},
        byWhich(4, &EnvelopeRow::compressionBy)};
    smallPrint(context.ui, words(context, phrase::kLettersExplained));
    const std::vector<int> places = orderedExtremes(context.state, of, rows);
    listSearch(context, of, static_cast<int>(rows.size()), static_cast<int>(places.size()),
               phrase::kFindMember);
    Table table(context.ui, id, columns);
    listHeader(context, table, of, phrase::kExtremes);
    drawOrdered(table, rows, places, [&](const EnvelopeRow& row, int) {
        pressableRow(context, table, row.member);
        table.text(0, row.name, {palette.ink});
        table.text(1, row.tension, {palette.tensionText});
        table.text(2, row.tensionBy, {palette.muted, context.ui.fonts.small});
        table.text(3, row.compression, {palette.compressionText});
        table.text(4, row.compressionBy, {palette.muted, context.ui.fonts.small});
    });
}

void envelopePage(PanelContext& context) {
    const EnvelopeShown& shown = context.derived.envelope;
    if (!isOf(shown, context.state)) {
        progressOf(context, context.derived.jobs.envelope);
        return;
    }
    beginScroll(context.ui, "envelope");
    gap(context.ui, 4);
    if (shown.hasChoice) {
        sourceChoice(context);
    }
    paragraph(context.ui, shown.says, shown.refused ? Ink::Warning : Ink::Plain);
    sentences(context, shown.warnings, shown.warnings);
    if (shown.rows.empty()) {
        gap(context.ui, 4);
        openModel(context);
    } else {
        gap(context.ui, 4);
        envelopeTable(context, "envelope", SortedTable::Envelope, shown.rows);
    }
    gap(context.ui, 16);
    endScroll();
}

} // namespace gusset
