#include "panels/pages/listed.hpp"

#include "app/fields/field_key.hpp"
#include "phrases/listed.hpp"

#include <cstddef>

namespace gusset {
namespace {

constexpr int kFewRows = 8; // too few to need a search

std::string sentenceOf(const PhraseBook& book, Phrase<> table, const Heading& heading,
                       const Listing& listing) {
    if (!listing.column) {
        return sayPlain(book, phrase::kAsDrawn, {{"table", say(book, table)}});
    }
    return sayPlain(book, listing.falling ? phrase::kOrderedFalling : phrase::kOrderedRising,
                    {{"table", say(book, table)},
                     {"column", heading.name.empty() ? heading.words : heading.name}});
}

} // namespace

void listHeader(PanelContext& context, Table& table, ListedTable of, Phrase<> name) {
    const PhraseBook& book = *context.state.book;
    const Listing& now = listingOf(context.state.notebook, of);
    const Column* pressed = table.orderingHeader(book, {now.column, now.falling});
    if (pressed) {
        const Listing after = withHeadingPressed(now, *pressed->orders, pressed->fallsFirst);
        context.actions.push_back(SetListing{of, after});
        context.requests.announce = sentenceOf(book, name, pressed->heading, after);
    }
}

void listSearch(PanelContext& context, ListedTable of, int rows, int shown, Phrase<> hint) {
    const Listing& listing = listingOf(context.state.notebook, of);
    const FieldId field = SearchField{of};
    const bool looksFor = !listing.words.empty();
    if (rows <= kFewRows && !looksFor && context.state.field.id != field) {
        return;
    }
    FieldLook look;
    look.field = field;
    look.name = look.hint = words(context, hint);
    look.text = look.look = listing.words;
    look.numeric = false;
    look.framed = true;
    fieldLine(context, look);
    if (!looksFor) {
        return;
    }
    const std::string all = wordsAs(context, phrase::kShowAll, ("##" + keyOf(field)).c_str());
    if (button(context.ui, all.c_str(), {})) {
        Listing after = listing;
        after.words.clear();
        context.actions.push_back(SetListing{of, after});
    }
    ImGui::SameLine();
    besideButtons(context.ui, sayPlain(*context.state.book, phrase::kShownOf,
                                       {{"shown", shown}, {"rows", rows}}));
}

} // namespace gusset
