#pragma once
// The model's tables in the page around the board, to be read and edited without the drawing: each
// cell that can be typed is a button with its text, which site/twin.js turns into an input when it
// is pressed. What was typed or pressed comes back as a field with the key "page.joint.3.x".

#include "app/fields/field.hpp"
#include "app/state/action.hpp"

#include <string>

namespace gusset {

// Joints, members, supports, loads, and materials and sections where there are any. Everything a
// user typed is escaped.
[[nodiscard]] std::string modelTablesHtml(const Truss&);

[[nodiscard]] bool isPageField(const std::string& key);
// Commits the edit or says why not. Besides cells there are the buttons "page.joint.3.remove" and
// "page.support.0.kind", whose text is "pin" or "roller".
void finishPageField(const AppState&, const FieldDone&, Actions&);

} // namespace gusset
