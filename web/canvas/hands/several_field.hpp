#pragma once
// What is typed for several selected things at once, in the strip over the tools. Each becomes one
// edit.

#include "app/fields/field.hpp"
#include "app/state/action.hpp"

namespace gusset {

[[nodiscard]] Phrase<> severalName(SeveralKind);    // before the field: "Move by"
[[nodiscard]] Phrase<> severalExample(SeveralKind); // what can be typed there: "as 30"
// What typing begins with.
[[nodiscard]] std::string severalText(const AppState&, SeveralKind);
// The text came back: its edit, or words on why it can't be read. False for another field.
bool finishSeveral(const AppState&, const FieldDone&, Actions&);

} // namespace gusset
