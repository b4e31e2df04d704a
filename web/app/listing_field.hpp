#pragma once
// What is looked for in a table of the notebook, as a field that is typed into: "list.7.words".

#include "app/action.hpp"
#include "app/field.hpp"

namespace gusset {

[[nodiscard]] std::string listingKey(ListedTable);
// The text came back: its rows are looked for. False for another field's key.
bool finishListing(const AppState&, const FieldDone&, Actions&);

} // namespace gusset
