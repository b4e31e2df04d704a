#pragma once
// The text of a field came back: what becomes of it.

#include "app/fields/field.hpp"
#include "app/state/action.hpp"

namespace gusset {

// Commits the edit that the text asks for or says why not, ends the field, and begins the next one.
// False, and nothing done: of fields on the board, of what is done to all that is picked, and of
// those that a panel keeps to itself.
bool finishField(const AppState&, const FieldDone&, Actions&);

} // namespace gusset
