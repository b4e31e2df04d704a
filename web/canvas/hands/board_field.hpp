#pragma once
// Values that are edited on the board itself: no panel draws or takes them. A bare number for a
// load's force is its magnitude and keeps its direction; `3, -4` and `5 @ 30` set both.

#include "app/fields/field.hpp"
#include "app/state/action.hpp"

namespace gusset {

[[nodiscard]] bool isBoardField(const FieldId&);
// Where the board's open field is now, kept within the free part of the board; none if the open
// field is not on the board.
[[nodiscard]] std::optional<FieldPlace> boardFieldPlace(const AppState&);
// Digits typed while a member is being drawn open the field for its end; otherwise does nothing.
void beginTyping(const AppState&, const std::string& text, Actions&);
// The text in the field so far: the drawing follows it as far as it can be read.
void followTyping(const AppState&, const FieldTyped&, Actions&);
// The text was returned: makes the edit it asks for, or says why it can't be read. Ends the field.
void finishBoardField(const AppState&, const FieldDone&, Actions&);

} // namespace gusset
