#pragma once
// What happens when the text of a field is returned.

#include "app/fields/field.hpp"
#include "app/state/action.hpp"

namespace gusset {

// Commits the edit that the text asks for or says why not, ends the field, and begins the next one.
// Does nothing and returns false for fields on the board, fields for all selected things, and
// fields that a panel handles itself.
bool finishField(const AppState&, const FieldDone&, Actions&);

} // namespace gusset
