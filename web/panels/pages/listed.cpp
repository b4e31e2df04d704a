#include "panels/pages/listed.hpp"

#include "app/fields/field_key.hpp"

#include <cstddef>

namespace gusset {
namespace {

constexpr int kFewRows = 8; // too few to need a search

std::string_view withoutUnit(std::string_view heading) {
    return heading.substr(0, heading.find(','));
}

std::string sentenceOf(const char* table, const Column& column, const Listing& listing) {
    if (!listing.column) {
        return std::string(table) + " as drawn";
    }
    return std::string(table) + " ordered by " + std::string(withoutUnit(column.heading)) +
           (listing.falling ? ", falling" : ", rising");
}

} // namespace

void listHeader(PanelContext& context, Table& table, ListedTable of, const char* name) {
    const Listing& now = listingOf(context.state.notebook, of);
    const Column* pressed = table.orderingHeader({now.column, now.falling});
    if (pressed) {
        const Listing after = withHeadingPressed(now, *pressed->orders, pressed->fallsFirst);
        context.actions.push_back(SetListing{of, after});
        context.requests.announce = sentenceOf(name, *pressed, after);
    }
}

void listSearch(PanelContext& context, ListedTable of, int rows, int shown, const char* hint) {
    const Listing& listing = listingOf(context.state.notebook, of);
    const FieldId field = SearchField{of};
    const bool looksFor = !listing.words.empty();
    if (rows <= kFewRows && !looksFor && context.state.field.id != field) {
        return;
    }
    FieldLook look;
    look.field = field;
    look.name = hint;
    look.text = look.look = listing.words;
    look.hint = hint;
    look.numeric = false;
    look.framed = true;
    fieldLine(context, look);
    if (!looksFor) {
        return;
    }
    const std::string all = "Show all##" + keyOf(field);
    if (button(context.ui, all.c_str(), {})) {
        Listing after = listing;
        after.words.clear();
        context.actions.push_back(SetListing{of, after});
    }
    ImGui::SameLine();
    besideButtons(context.ui, std::to_string(shown) + " of " + std::to_string(rows) + " shown");
}

} // namespace gusset
