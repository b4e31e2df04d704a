#pragma once
// Values that are typed on the board itself: no panel draws or takes them. Of a load's force a bare
// number is its size and keeps its direction, `3, -4` and `5 @ 30` set both.

#include "app/fields/field.hpp"
#include "app/state/action.hpp"

namespace gusset {

[[nodiscard]] bool isBoardField(const FieldId&);
// Where the board's field being edited stands now, kept within the free part of the board; nothing
// when the field in hand is none of the board's.
[[nodiscard]] std::optional<FieldPlace> boardFieldPlace(const AppState&);
// Digits typed while a member is being drawn open the field of its end; nothing otherwise.
void beginTyping(const AppState&, const std::string& text, Actions&);
// What stands in the field so far: what is drawn obeys it as far as it can be read.
void followTyping(const AppState&, const FieldTyped&, Actions&);
// The text came back: the edit it asks for, or words on why it can't be read. Ends the field.
void finishBoardField(const AppState&, const FieldDone&, Actions&);

} // namespace gusset
