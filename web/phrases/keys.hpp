#pragma once
// What the keyboard does on the board.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kKeys = "Keys"_phrase;
inline constexpr auto kColumnKey = "key"_phrase;
inline constexpr auto kColumnOnBoard = "on the board"_phrase;
inline constexpr auto kKeyNext = "Space, Page Down"_phrase;
inline constexpr auto kDoesNext = "next step of the working"_phrase;
inline constexpr auto kKeyBack = "Page Up"_phrase;
inline constexpr auto kDoesBack = "step back"_phrase;
inline constexpr auto kKeyDigits = "Digits while drawing"_phrase;
inline constexpr auto kDoesDigits = "length, length @ angle, dx, dy"_phrase;
inline constexpr auto kKeyShift = "Shift and a drag"_phrase;
inline constexpr auto kDoesShift = "pick in a box or a loop"_phrase;
inline constexpr auto kKeyMenu = "Right button, Menu key"_phrase;
inline constexpr auto kDoesMenu = "what can be done there"_phrase;
inline constexpr auto kKeyPick = "J, M, S, L"_phrase;
inline constexpr auto kDoesPick = "next joint, member, support, load"_phrase;
inline constexpr auto kKeyArrows = "Arrows"_phrase;
inline constexpr auto kDoesArrows = "move what is picked, or leaf"_phrase;
inline constexpr auto kKeyDelete = "Delete"_phrase;
inline constexpr auto kDoesDelete = "remove what is picked"_phrase;
inline constexpr auto kKeyEscape = "Escape"_phrase;
inline constexpr auto kDoesEscape = "let go"_phrase;
inline constexpr auto kKeyUndo = "Ctrl Z, Ctrl Y"_phrase;
inline constexpr auto kDoesUndo = "undo, redo"_phrase;
inline constexpr auto kKeySave = "Ctrl S"_phrase;
inline constexpr auto kDoesSave = "save as a file, anywhere"_phrase;
inline constexpr auto kKeyAll = "Ctrl A"_phrase;
inline constexpr auto kDoesAll = "pick everything"_phrase;
inline constexpr auto kKeyFit = "Home, Ctrl 0"_phrase;
inline constexpr auto kDoesFit = "fit the drawing"_phrase;
inline constexpr auto kKeyCells = "Tab, Enter in a table"_phrase;
inline constexpr auto kDoesCells = "next cell, cell below"_phrase;
inline constexpr auto kKeyPanels = "F6"_phrase;
inline constexpr auto kDoesPanels = "into the panels, and on"_phrase;
inline constexpr auto kKeyThere = "Tab, arrows, Enter there"_phrase;
inline constexpr auto kDoesThere = "go about, press"_phrase;
inline constexpr auto kKeyEscapeThere = "Escape there"_phrase;
inline constexpr auto kDoesEscapeThere = "back to the board"_phrase;

} // namespace gusset::phrase
