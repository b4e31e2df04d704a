#include "app/derived/result_lists.hpp"
#include "app/fields/questions.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/ordered_rows.hpp"
#include "phrases/columns.hpp"
#include "phrases/results.hpp"
#include "phrases/results/envelope.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/table_view.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {
namespace {

Ink inkOf(const ForceRow& row) {
    return row.sense == Sense::Tension       ? Ink::Tension
           : row.sense == Sense::Compression ? Ink::Compression
                                             : Ink::Zero;
}

void verdictLines(PanelContext& context) {
    const Ui& ui = context.ui;
    const Derived& derived = context.derived;
    gap(ui, 4);
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {0, ui.px(2)});
    if (!derived.solution.solved) {
        verdictInstead(context);
    }
    for (std::size_t i = 0; derived.solution.solved && i < derived.verdict.size(); ++i) {
        const std::string& line = derived.verdict[i];
        const auto& warnings = derived.warnings;
        if (i == 0 || std::find(warnings.begin(), warnings.end(), line) != warnings.end()) {
            sentences(context, {line}, warnings);
        } else {
            smallPrint(ui, line);
        }
    }
    ImGui::PopStyleVar();
}

void reactions(PanelContext& context) {
    const Truss& truss = context.state.truss;
    const char* unit = symbolOf(truss.units.force);
    const UnitHeading x = headOf(context, phrase::kRightSign, unit);
    const UnitHeading y = headOf(context, phrase::kUpSign, unit);
    const char* joint = words(context, phrase::kCellJoint);
    const std::vector<ReactionRow>& rows = context.derived.reactions;
    const std::array columns{
        Column{{joint}, 80, 1, Align::Left, 0, false, longestOf(rows, &ReactionRow::name)},
        Column{x, 90, 1, Align::Right, 1, true, longestOf(rows, &ReactionRow::x), nullptr,
               decimalsOf(rows, &ReactionRow::x)},
        Column{y, 90, 1, Align::Right, 2, true, longestOf(rows, &ReactionRow::y), nullptr,
               decimalsOf(rows, &ReactionRow::y)}};
    sectionHeading(context.ui, words(context, phrase::kReactions));
    const std::vector<int> places = orderedReactions(context.state, context.derived);
    listSearch(context, SortedTable::Reactions, static_cast<int>(rows.size()),
               static_cast<int>(places.size()), phrase::kFindJoint);
    Table table(context.ui, "reactions", columns);
    listHeader(context, table, SortedTable::Reactions, phrase::kReactions);
    for (const int place : places) {
        const ReactionRow& row = rows[static_cast<std::size_t>(place)];
        pressableRow(context, table, row.joint);
        const Table::TextLook plain{context.ui.palette->ink};
        table.text(0, truss.joints[row.joint.at()].label, plain);
        table.text(1, row.x, plain);
        table.text(2, row.y, plain);
    }
}

// A fraction too long for the column is useless to a reader, and its decimals are beside it.
void exactCell(PanelContext& context, Table& table, const ForceRow& row) {
    constexpr std::size_t kLongest = 22; // bytes
    const std::vector<std::string>& exact = context.derived.exact.forces;
    if (isOf(context.derived.exact, context.state) && row.member.at() < exact.size()) {
        const std::string& text = exact[row.member.at()];
        const bool isShort = text.size() <= kLongest && table.fits(3, text);
        table.text(3, isShort ? text : words(context, phrase::kLongFraction),
                   {context.ui.palette->ink});
    }
}

void memberRow(PanelContext& context, Table& table, const ForceRow& row) {
    pressableRow(context, table, row.member);
    const Ui& ui = context.ui;
    const Colour ink = textColour(*ui.palette, inkOf(row));
    table.text(0, row.name, {ui.palette->ink});
    table.text(1, row.number, {ink});
    table.text(2, row.letter, {ink, ui.fonts.strong});
    if (context.state.notebook.exact) {
        exactCell(context, table, row);
    } else {
        const Table::Box box = table.cell(2);
        const float left = box.low.x + ui.px(34);
        drawForceSign(*ImGui::GetWindowDrawList(), ui, inkOf(row),
                      {left, std::round((box.low.y + box.high.y) / 2)},
                      std::min(ui.px(44), box.high.x - ui.px(4) - left));
    }
}

// Exact forces beside the decimals; on a large truss they appear a little later.
void exactChoice(PanelContext& context) {
    bool exact = context.state.notebook.exact;
    if (toggle(context.ui, words(context, phrase::kExactValues), exact)) {
        exact = !exact;
        context.actions.push_back(Set{&NotebookState::exact, exact});
    }
    if (!exact) {
        return;
    }
    const ExactShown& shown = context.derived.exact;
    if (!isOf(shown, context.state)) {
        progressOf(context, context.derived.jobs.exact);
    } else if (!shown.whyNot.empty()) {
        smallPrint(context.ui, shown.whyNot);
    }
}

void filterChoice(PanelContext& context) {
    // In the order of ForceFilter.
    constexpr std::array kFilters{phrase::kFilterAll, phrase::kLetterTension,
                                  phrase::kLetterCompression, phrase::kLetterZero,
                                  phrase::kFilterPicked};
    const int now = static_cast<int>(context.state.notebook.forceFilter);
    const int chosen = wordChoice(context.ui, "filter", words(context, kFilters), now);
    if (chosen != now) {
        const auto filter = static_cast<ForceFilter>(chosen);
        context.actions.push_back(Set{&NotebookState::forceFilter, filter});
    }
}

void forceTable(PanelContext& context, const std::vector<int>& places) {
    const UnitHeading force =
        headOf(context, phrase::kCellForce, symbolOf(context.state.truss.units.force));
    const char* member = words(context, phrase::kCellMember);
    const char* letter = words(context, phrase::kCellLetter);
    const char* exactly = words(context, phrase::kCellExact);
    const bool exact = context.state.notebook.exact;
    const std::vector<ForceRow>& rows = context.derived.forces;
    std::vector<Column> columns{
        Column{{member}, 80, 1, Align::Left, 0, false, longestOf(rows, &ForceRow::name)},
        Column{force, 90, 1, Align::Right, 1, true, longestOf(rows, &ForceRow::number), nullptr,
               decimalsOf(rows, &ForceRow::number)},
        Column{{letter}, exact ? 60.0 : 100.0, 1, Align::Left, 2, true}};
    if (exact) {
        columns.push_back(Column{{exactly}, 100, 1.5, Align::Right});
    }
    Table table(context.ui, "forces", columns);
    listHeader(context, table, SortedTable::Forces, phrase::kMemberForces);
    drawOrdered(table, rows, places,
                [&](const ForceRow& row, int) { memberRow(context, table, row); });
}

void memberForces(PanelContext& context) {
    sectionHeading(context.ui, words(context, phrase::kMemberForces));
    smallPrint(context.ui, words(context, phrase::kLettersExplained));
    filterChoice(context);
    exactChoice(context);
    const std::vector<int> places = orderedForces(context.state, context.derived);
    listSearch(context, SortedTable::Forces, static_cast<int>(context.derived.forces.size()),
               static_cast<int>(places.size()), phrase::kFindMember);
    forceTable(context, places);
    if (places.empty()) {
        smallPrint(context.ui, words(context, phrase::kNoneOfThem));
    }
}

void notes(PanelContext& context) {
    const Solution& solution = context.derived.solution;
    if (solution.notes.empty()) {
        return;
    }
    sectionHeading(context.ui, words(context, phrase::kNotesHeading));
    for (const Issue& note : solution.notes) {
        smallPrint(context.ui, "– " + said(*context.state.book, note.says));
    }
}

void forcesPage(PanelContext& context) {
    beginScroll(context.ui, "forces");
    verdictLines(context);
    mechanismButtons(context);
    loadChoice(context);
    if (context.derived.solution.solved) {
        reactions(context);
        memberForces(context);
    }
    notes(context);
    gap(context.ui, 16);
    endScroll();
}

ResultPage pageChoice(PanelContext& context) {
    constexpr std::array kPages{phrase::kPageForces, phrase::kHeadDisplacements,
                                phrase::kEnvelopeHeading, phrase::kPageInfluence,
                                phrase::kPageChecks};
    const int now = static_cast<int>(context.state.notebook.results);
    const int chosen = wordChoice(context.ui, "results", words(context, kPages), now);
    if (chosen != now) {
        const auto page = static_cast<ResultPage>(chosen);
        context.actions.push_back(Set{&NotebookState::results, page});
        context.actions.push_back(SetMotion{{.plays = true}});
    }
    return context.state.notebook.results;
}

} // namespace

void loadChoice(PanelContext& context) {
    const Choices answers = loadAnswers(context.state);
    if (answers.size() < 2) {
        return;
    }
    std::vector<const char*> names;
    int before = 0;
    for (std::size_t i = 0; i < answers.size(); ++i) {
        names.push_back(answers[i].name.c_str());
        before = answers[i].isNow ? static_cast<int>(i) : before;
    }
    smallPrint(context.ui, words(context, phrase::kUnder));
    const int after = wordChoice(context.ui, "loads", names, before);
    if (after != before) {
        const Actions& does = answers[static_cast<std::size_t>(after)].does;
        context.actions.insert(context.actions.end(), does.begin(), does.end());
    }
}

void forcesTab(PanelContext& context) {
    switch (pageChoice(context)) {
    case ResultPage::Forces:
        forcesPage(context);
        break;
    case ResultPage::Movement:
        movementPage(context);
        break;
    case ResultPage::Envelope:
        envelopePage(context);
        break;
    case ResultPage::Influence:
        influencePage(context);
        break;
    case ResultPage::Checks:
        checksPage(context);
        break;
    }
}

} // namespace gusset
