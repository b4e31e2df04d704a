#pragma once
// What the controls of the page's own tables ask for. One that names something that is gone does
// nothing.

#include "app/fields/questions.hpp"
#include "app/state/field_id.hpp"
#include "core/outcome.hpp"

#include <string>

namespace gusset {

[[nodiscard]] bool isShown(const AppState&, PagePart); // was asked for
void press(const AppState&, const PageControl&, const std::string& text, Actions&);
void answer(const AppState&, const PageAnswer&, const std::string& text, Actions&);

// The members that a section cuts, "AB, CD", or the joints of a path, "A, B, C".
[[nodiscard]] std::string listText(const AppState&, PageList);
// Fails with a sentence when a name can't be read.
[[nodiscard]] Outcome<Actions> listTyped(const AppState&, PageList, const std::string& text);

} // namespace gusset
