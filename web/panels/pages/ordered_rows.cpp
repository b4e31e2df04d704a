#include "panels/pages/ordered_rows.hpp"

#include "app/fields/field_key.hpp"
#include "phrases/table_view.hpp"

#include <cstddef>

namespace gusset {
namespace {

constexpr int kFewRows = 8; // too few to need a search

std::string sentenceOf(const PhraseBook& book, Phrase<> table, const Heading& heading,
                       const TableView& tableView) {
    if (!tableView.column) {
        return sayPlain(book, phrase::kAsDrawn, {{"table", say(book, table)}});
    }
    return sayPlain(book, tableView.falling ? phrase::kOrderedFalling : phrase::kOrderedRising,
                    {{"table", say(book, table)},
                     {"column", heading.name.empty() ? heading.words : heading.name}});
}

} // namespace

void listHeader(PanelContext& context, Table& table, SortedTable of, Phrase<> name) {
    const PhraseBook& book = *context.state.book;
    const TableView& now = tableViewOf(context.state.notebook, of);
    const Column* pressed = table.orderingHeader(book, {now.column, now.falling});
    if (pressed) {
        const TableView after = withHeadingPressed(now, *pressed->orders, pressed->fallsFirst);
        context.actions.push_back(SetTableView{of, after});
        context.requests.announce = sentenceOf(book, name, pressed->heading, after);
    }
}

void listSearch(PanelContext& context, SortedTable of, int rows, int shown, Phrase<> hint) {
    const TableView& tableView = tableViewOf(context.state.notebook, of);
    const FieldId field = SearchField{of};
    const bool looksFor = !tableView.words.empty();
    if (rows <= kFewRows && !looksFor && context.state.field.id != field) {
        return;
    }
    FieldLook look;
    look.field = field;
    look.name = look.hint = words(context, hint);
    look.text = look.look = tableView.words;
    look.numeric = false;
    look.framed = true;
    fieldLine(context, look);
    if (!looksFor) {
        return;
    }
    const std::string all = wordsAs(context, phrase::kShowAll, ("##" + keyOf(field)).c_str());
    if (button(context.ui, all.c_str(), {})) {
        TableView after = tableView;
        after.words.clear();
        context.actions.push_back(SetTableView{of, after});
    }
    ImGui::SameLine();
    besideButtons(context.ui, sayPlain(*context.state.book, phrase::kShownOf,
                                       {{"shown", shown}, {"rows", rows}}));
}

} // namespace gusset
