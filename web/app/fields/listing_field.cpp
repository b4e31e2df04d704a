#include "app/fields/listing_field.hpp"

#include "app/fields/cell_readers.hpp"

namespace gusset {

std::string listingKey(ListedTable table) {
    return "list." + std::to_string(static_cast<int>(table)) + ".words";
}

bool finishListing(const AppState& state, const FieldDone& done, Actions& actions) {
    for (std::size_t i = 0; i < kListedTables; ++i) {
        const auto table = static_cast<ListedTable>(i);
        if (done.key != listingKey(table)) {
            continue;
        }
        actions.push_back(EndField{});
        Listing listing = listingOf(state.notebook, table);
        if (done.how != FieldEnd::GivenUp && trimmed(done.text) != listing.words) {
            listing.words = trimmed(done.text);
            actions.push_back(SetListing{table, listing});
        }
        return true;
    }
    return false;
}

} // namespace gusset
