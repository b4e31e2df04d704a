#pragma once
// What is looked for in a table of the notebook, as a field that is typed into: "list.7.words".

#include "app/fields/field.hpp"
#include "app/state/action.hpp"

namespace gusset {

[[nodiscard]] std::string listingKey(ListedTable);
// The text came back: its rows are looked for. False for another field's key.
bool finishListing(const AppState&, const FieldDone&, Actions&);

} // namespace gusset
