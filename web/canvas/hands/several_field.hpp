#pragma once
// What is typed for all selected things at once, in the strip above the tools. Each makes one edit.

#include "app/fields/field.hpp"
#include "app/state/action.hpp"

namespace gusset {

[[nodiscard]] Phrase<> severalName(SeveralKind);    // before the field: "Move by"
[[nodiscard]] Phrase<> severalExample(SeveralKind); // what can be typed there: "as 30"
// The text of the field when typing begins.
[[nodiscard]] std::string severalText(const AppState&, SeveralKind);
// The text was returned: makes its edit, or says why it can't be read. False for any other field.
bool finishSeveral(const AppState&, const FieldDone&, Actions&);

} // namespace gusset
