#include "app/derived/result_lists.hpp"
#include "panels/frame/parts.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/envelope_rows.hpp"
#include "panels/pages/listed.hpp"
#include "phrases/tables.hpp"

#include <array>

namespace gusset {
namespace {

void sourceChoice(PanelContext& context) {
    constexpr std::array kSources{"combinations", "cases"};
    smallPrint(context.ui, "Over");
    const int now = context.state.notebook.envelopeOfCases ? 1 : 0;
    const int chosen = wordChoice(context.ui, "envelope of", kSources, now);
    if (chosen != now) {
        context.actions.push_back(Set{&NotebookState::envelopeOfCases, chosen == 1});
    }
}

void openModel(PanelContext& context) {
    if (button(context.ui, "Open the model", {})) {
        turnTo(NotebookTab::Model, context.actions);
    }
}

} // namespace

void envelopeTable(PanelContext& context, const char* id, ListedTable of,
                   const std::vector<EnvelopeRow>& rows) {
    const Palette& palette = *context.ui.palette;
    const char* unit = symbolOf(context.state.truss.units.force);
    const std::string tension = headOf(context, phrase::kLetterTension, unit);
    const std::string compression = headOf(context, phrase::kLetterCompression, unit);
    const std::string member = words(context, phrase::kCellMember);
    const std::string by = words(context, phrase::kCellBy);
    const ImFont* small = context.ui.fonts.small;
    const std::array columns{
        Column{member, 56, 0.4, Align::Left, 0, false, longestOf(rows, &EnvelopeRow::name)},
        Column{tension, 62, 0.6, Align::Right, 1, true, longestOf(rows, &EnvelopeRow::tension)},
        Column{by, 88, 1, Align::Left, 2, false, longestOf(rows, &EnvelopeRow::tensionBy), small},
        Column{compression, 62, 0.6, Align::Right, 3, true,
               longestOf(rows, &EnvelopeRow::compression)},
        Column{by, 88, 1, Align::Left, 4, false, longestOf(rows, &EnvelopeRow::compressionBy),
               small}};
    smallPrint(context.ui, words(context, phrase::kLettersExplained));
    const std::vector<int> places = listedExtremes(context.state, of, rows);
    listSearch(context, of, static_cast<int>(rows.size()), static_cast<int>(places.size()),
               "find a member");
    Table table(context.ui, id, columns);
    listHeader(context, table, of, "Extremes");
    drawListed(table, rows, places, [&](const EnvelopeRow& row, int) {
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
        envelopeTable(context, "envelope", ListedTable::Envelope, shown.rows);
    }
    gap(context.ui, 16);
    endScroll();
}

} // namespace gusset
